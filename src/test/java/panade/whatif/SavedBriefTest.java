package panade.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.document.syntax.TypedField;
import panade.domain.Brief;
import panade.domain.purchase.OfferId;
import panade.testing.SmallKitchen;
import panade.whatif.SavedBrief.Saved;

/** What is changed, written and read again. */
class SavedBriefTest {
    @TempDir
    private Path folder;

    private Path file;
    private Brief start;

    @BeforeEach
    void write() throws IOException {
        file = BeanKitchen.write(folder);
        start = read(file);
    }

    private static Brief read(Path file) {
        var reading = Documents.readBrief(file, Overrides.NONE);
        assertThat(reading).as(file.toString()).isInstanceOf(Reading.Accepted.class);
        return ((Reading.Accepted<Brief>) reading).value();
    }

    private ChangedBrief changed() {
        return new ChangedBrief(file, Overrides.NONE, start);
    }

    private Saved save(Changes changes, String name, boolean over) {
        return new SavedBrief(changed(), List.of(file, folder.resolve("base.json"), folder.resolve("prices.csv")))
                .write(changes, name, over);
    }

    private TypedField typed(String bound, String side, String text) {
        var place = start.bounds().stream()
                .filter(each -> each.name().equals(bound))
                .findFirst()
                .orElseThrow()
                .origin();
        return new TypedField(place.file(), place.pointer(), side, text);
    }

    private OfferId beansOfNorth() {
        return start.offers().get(0).id();
    }

    private static BigFraction cost(Brief brief) {
        return SmallKitchen.blended(brief).blend().costPerKg();
    }

    /** Saves changes, and sees that what is read again costs what the page said. */
    private String saved(Changes changes) throws IOException {
        var written = save(changes, "saved", false);
        assertThat(written).isInstanceOf(Saved.Written.class);
        var meant = ((Reading.Accepted<Brief>) changed().with(changes)).value();
        assertThat(cost(read(folder.resolve("saved.json")))).isEqualTo(cost(meant));
        return Files.readString(folder.resolve("saved.json"));
    }

    private static Changes limits(TypedField... typed) {
        return new Changes(null, null, List.of(typed), Map.of(), Set.of());
    }

    @Test
    void a_brief_says_what_it_changes_and_what_it_is_based_on() throws IOException {
        var text = saved(new Changes(
                "5 lb",
                "1.20/lb",
                List.of(typed("protein", "min", "14 %"), typed("fat", "max", "")),
                Map.of(),
                Set.of()));
        assertThat(text).isEqualTo("""
                {
                  "basedOn": "brief.json",
                  "batch": "5 lb",
                  "target": "1.20/lb",
                  "bounds": [
                    {"name": "protein", "property": "PROCNT", "min": "14 %"},
                    {"name": "fat", "property": "FAT", "min": "5 %"}
                  ]
                }
                """);
        assertThat(read(folder.resolve("saved.json")).bounds()).hasSameSizeAs(start.bounds());
    }

    @Test
    void numbers_of_a_stage_are_written_with_all_stages() throws IOException {
        assertThat(saved(limits(typed("soak share", "max", "70 %"))))
                .contains(
                        "\"stages\": [\n    {\"id\": \"soak\", \"ingredients\": [\"beans\"], \"share\": {\"max\": \"70 %\"}}");
    }

    @Test
    void what_no_basis_could_lose_makes_it_whole() throws IOException {
        var off = saved(limits(typed("protein", "min", "")));
        assertThat(off)
                .doesNotContain("basedOn")
                .doesNotContain("PROCNT")
                .contains("\"ingredients\": \"ingredients.json\"");
        assertThat(save(new Changes(null, "", List.of(), Map.of(), Set.of()), "saved", true))
                .isInstanceOf(Saved.Written.class);
        assertThat(read(folder.resolve("saved.json")).target()).isNull();
    }

    @Test
    void prices_and_stock_are_a_price_list_of_their_own() throws IOException {
        var prices = new Changes(null, null, List.of(), Map.of(beansOfNorth(), "$2.50/5 kg"), Set.of());
        assertThat(saved(prices)).isEqualTo("""
                {
                  "basedOn": "brief.json",
                  "prices": ["saved-prices.csv"]
                }
                """);
        assertThat(Files.readString(folder.resolve("saved-prices.csv"))).isEqualTo("""
                ingredient,supplier,price,per,available
                beans,North,$2.50,5 kg,
                beans,South,3.00,kg,
                oil,North,5.00,kg,
                water,tap,0.00,kg,
                """);
        var out = new Changes(null, null, List.of(), Map.of(), Set.of(beansOfNorth()));
        assertThat(save(out, "saved", true)).isInstanceOf(Saved.Written.class);
        assertThat(Files.readString(folder.resolve("saved-prices.csv"))).contains("beans,North,2.00,kg,0 kg\n");
        assertThat(Files.readString(folder.resolve("prices.csv"))).doesNotContain("0 kg");
    }

    @Test
    void what_the_command_line_says_is_written_as_well() throws IOException {
        var overrides = new Overrides(List.of(folder.resolve("prices.csv")), "7 kg", List.of("oil"), null);
        var opened = ((Reading.Accepted<Brief>) Documents.readBrief(file, overrides)).value();
        var saver = new SavedBrief(new ChangedBrief(file, overrides, opened), List.of(file));
        var typed = limits(typed("fat", "min", "0 %"));
        assertThat(saver.write(typed, "saved.json", false)).isInstanceOf(Saved.Written.class);
        assertThat(Files.readString(folder.resolve("saved.json")))
                .contains(
                        "\"batch\": \"7 kg\"",
                        "\"avoid\": {\"ingredients\": [\"oil\"]}",
                        "\"prices\": [\"prices.csv\"]");
    }

    @Test
    void a_file_that_is_there_is_written_over_only_when_that_is_asked_for() throws IOException {
        var other = Files.writeString(folder.resolve("other.json"), "mine");
        assertThat(save(limits(typed("fat", "min", "6 %")), "other.json", false))
                .isEqualTo(new Saved.Occupied(List.of(other)));
        assertThat(other).hasContent("mine");
        assertThat(save(limits(typed("fat", "min", "6 %")), "other.json", true)).isInstanceOf(Saved.Written.class);
        assertThat(read(other).bounds()).hasSameSizeAs(start.bounds());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "brief.json",
                "brief",
                "base.json",
                "../up.json",
                "/tmp/up.json",
                ".hidden",
                " ",
                "",
                "a\\b",
                "a\u0000b"
            })
    void no_name_leads_elsewhere_or_over_what_was_opened(String name) throws IOException {
        var before = Files.readString(file);
        assertThat(save(limits(typed("fat", "min", "6 %")), name, true)).isInstanceOf(Saved.Refused.class);
        assertThat(file).hasContent(before);
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(4);
        }
    }

    @Test
    void what_cannot_be_read_is_not_written() {
        assertThat(save(limits(typed("fat", "min", "6")), "saved", false)).isInstanceOf(Saved.Refused.class);
        assertThat(folder.resolve("saved.json")).doesNotExist();
    }

    @Test
    void texts_are_quoted_as_json_has_them() {
        var node = panade.document.syntax.JsonDocument.parse(
                "{\"a\\\"b\\\\\": [\"\\u0001\\n\\u00e9\", 1.50, true, null, {}]}",
                "here",
                new panade.document.syntax.Problems());
        assertThat(NodeText.text(node.orElseThrow()))
                .isEqualTo("{\"a\\\"b\\\\\": [\"\\u0001\\u000a\u00e9\", 1.50, true, null, {}]}");
    }
}
