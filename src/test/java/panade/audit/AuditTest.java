package panade.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Use;

/**
 * Blends written out by hand, one right and each of the others wrong in a single way. 10 kg of bean (2/kg from north,
 * 1/kg from south, of which there are 3 kg), oil (4/kg, half of it usable) and gum (8/kg). Data invented.
 */
class AuditTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void writeDocuments() throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "small", "source": "invented", "ingredients": [
                  {"id": "bean", "label": "beans", "values": {"WATER": 50, "FAT": 0}, "others": 0, "allergens": []},
                  {"id": "oil", "values": {"WATER": 0, "FAT": 100}, "others": 0, "allergens": [], "usable": "50 %"},
                  {"id": "gum", "kinds": ["binder"], "values": {"WATER": 10, "FAT": 0}, "others": 0, "allergens": []},
                  {"id": "starch", "kinds": ["binder"], "values": {"WATER": 10, "FAT": 0}, "others": 0,
                   "allergens": []}]}
                """);
        Files.writeString(folder.resolve("prices.csv"), """
                ingredient,supplier,price,per,available
                bean,north,2,kg,
                bean,south,1,kg,3 kg
                oil,north,4,kg,
                gum,north,8,kg,
                starch,north,1,kg,
                """);
    }

    @Test
    void nothing_is_wrong_with_a_blend_that_keeps_everything() throws IOException {
        assertThat(faults(brief(), right())).isEmpty();
    }

    @Test
    void shares_make_one_batch() throws IOException {
        var twice = new ArrayList<>(right());
        twice.addAll(right());
        assertThat(faults(brief(), twice)).anyMatch(fault -> fault.contains("add up to 2"));
        assertThat(faults(brief(), right().subList(0, 3))).anyMatch(fault -> fault.contains("does not make one batch"));
    }

    @Test
    void no_share_is_nothing_or_less() throws IOException {
        var lines = new ArrayList<>(right());
        lines.add(new Row("starch", "mix", "north", 0));
        assertThat(faults(brief(), lines)).containsExactly("lists starch with a share that is not above nothing");
    }

    @Test
    void an_ingredient_goes_only_where_it_belongs() throws IOException {
        var lines = new ArrayList<>(right());
        lines.set(2, new Row("oil", "mix", "north", 20));
        assertThat(faults(brief(), lines)).containsExactly("puts oil into the stage mix, where it does not belong");
    }

    @Test
    void what_is_avoided_is_not_used() throws IOException {
        var avoiding = brief("\"avoid\": {\"ingredients\": [\"gum\"]},");
        assertThat(faults(avoiding, right())).anyMatch(fault -> fault.contains("uses gum, which may not be used"));
        var only = brief("\"only\": [\"bean\", \"oil\"],");
        assertThat(faults(only, right())).anyMatch(fault -> fault.contains("uses gum, which may not be used"));
    }

    @Test
    void no_more_of_an_offer_is_bought_than_there_is() throws IOException {
        // 40 % of 10 kg are 4 kg of the 3 kg that south has
        var lines = List.of(
                new Row("bean", "mix", "north", 38),
                new Row("bean", "mix", "south", 40),
                new Row("oil", "fat", "north", 20),
                new Row("gum", "mix", "north", 2));
        assertThat(faults(brief(), lines)).containsExactly("breaks \"bean available south\"");
    }

    @Test
    void suppliers_are_drawn_alike_in_every_stage() throws IOException {
        var lines = List.of(
                new Row("bean", "fat", "north", 10),
                new Row("bean", "mix", "north", 48),
                new Row("bean", "mix", "south", 20),
                new Row("oil", "fat", "north", 20),
                new Row("gum", "mix", "north", 2));
        assertThat(faults(brief(), lines))
                .allMatch(fault -> fault.equals("draws the suppliers of bean differently from stage to stage"))
                .isNotEmpty();
    }

    @Test
    void a_line_costs_what_its_offer_asks() throws IOException {
        var brief = brief();
        var lines = new ArrayList<>(blend(brief, right()).lines());
        var oil = lines.get(2);
        // half of the oil is lost in trimming, so that 20 % cost .2 x 4 / .5 = 1.6
        assertThat(oil.costPerKg()).isEqualTo(BigFraction.of(8, 5));
        lines.set(2, new Blend.Line(oil.use(), oil.offer(), oil.share(), BigFraction.of(4, 5)));
        assertThat(new Audit(brief, new Blend(lines, BigFraction.ONE)).faults())
                .containsExactly("costs oil at another price than its offer's");
    }

    @Test
    void bounds_are_kept() throws IOException {
        var lines = new ArrayList<>(right());
        lines.set(0, new Row("bean", "mix", "north", 51));
        lines.set(2, new Row("oil", "fat", "north", 19));
        assertThat(faults(brief(), lines)).containsExactly("breaks \"fat\"");
    }

    @Test
    void a_bound_on_the_cooked_batch_is_measured_after_cooking() throws IOException {
        // 70 % bean lose a tenth of 35 % water and the gum .02 of .2 %: 96.48 left, fat 20 / 96.48 = 20.73 %
        var brief = brief("""
                "cooking": {"lose": {"WATER": "10 %"}},
                """, """
                {"name": "cooked fat", "property": "FAT", "state": "cooked", "max": "20.5 %"}""");
        var beans = List.of(
                new Row("bean", "mix", "north", 78),
                new Row("oil", "fat", "north", 20),
                new Row("gum", "mix", "north", 2));
        assertThat(faults(brief, beans)).containsExactly("breaks \"cooked fat\"");
    }

    @Test
    void a_share_of_the_cooked_batch_is_measured_so_beside_a_weight() throws IOException {
        // beans are 78 %, half of it water, of which a tenth is lost: (78 - 3.9) / 96.08 = 77.12 % of the cooked batch
        var bound = """
                {"name": "cooked beans", "ingredient": "bean", "state": "cooked", "min": "%s", "max": "9 kg"}""";
        var cooking = """
                "cooking": {"lose": {"WATER": "10 %"}},
                """;
        assertThat(faults(brief(cooking, bound.formatted("77.2 %")), right()))
                .containsExactly("breaks \"cooked beans\"");
        assertThat(faults(brief(cooking, bound.formatted("77.1 %")), right())).isEmpty();
    }

    @Test
    void what_is_used_is_used_as_much_as_asked() throws IOException {
        var brief = rules("{\"whenUsed\": \"gum\", \"min\": \"3 %\"}");
        assertThat(faults(brief, right())).containsExactly("uses less of gum than 3 %");
        assertThat(faults(rules("{\"whenUsed\": \"gum\", \"min\": \"2 %\"}"), right()))
                .isEmpty();
    }

    @Test
    void as_many_of_a_kind_are_used_as_asked() throws IOException {
        assertThat(faults(rules("{\"choose\": {\"kind\": \"binder\"}, \"min\": 2}"), right()))
                .containsExactly("uses fewer than 2 of gum, starch");
        assertThat(faults(rules("{\"choose\": {\"kind\": \"binder\"}, \"min\": 1, \"max\": 1}"), right()))
                .isEmpty();
        assertThat(faults(rules("{\"choose\": {\"ingredient\": [\"bean\", \"gum\"]}, \"max\": 1}"), right()))
                .containsExactly("uses bean and gum, where the brief allows 1 of these at most");
    }

    @Test
    void what_another_asks_for_is_there() throws IOException {
        assertThat(faults(rules("{\"if\": \"oil\", \"then\": \"starch\"}"), right()))
                .containsExactly("uses oil without any of starch");
        assertThat(faults(rules("{\"if\": \"oil\", \"then\": \"gum\"}"), right()))
                .isEmpty();
        assertThat(faults(rules("{\"if\": \"starch\", \"then\": \"starch\"}"), right()))
                .isEmpty();
    }

    @Test
    void what_is_kept_apart_is_apart() throws IOException {
        assertThat(faults(rules("{\"neverTogether\": [\"oil\", \"gum\"]}"), right()))
                .containsExactly("uses gum and oil together, which the brief keeps apart");
        assertThat(faults(rules("{\"neverTogether\": [\"oil\", \"starch\"]}"), right()))
                .isEmpty();
    }

    @Test
    void the_label_shows_no_more_names_than_allowed() throws IOException {
        assertThat(faults(brief("\"maxIngredients\": 2,"), right()))
                .containsExactly("shows 3 names on the label, 2 allowed");
        assertThat(faults(brief("\"maxIngredients\": 3,"), right())).isEmpty();
    }

    /** A line of a blend, its share in hundredths. */
    private record Row(String ingredient, String stage, String supplier, int percent) {}

    private static List<Row> right() {
        return List.of(
                new Row("bean", "mix", "north", 50),
                new Row("bean", "mix", "south", 28),
                new Row("oil", "fat", "north", 20),
                new Row("gum", "mix", "north", 2));
    }

    private static List<String> faults(Brief brief, List<Row> rows) {
        return new Audit(brief, blend(brief, rows)).faults();
    }

    private static Blend blend(Brief brief, List<Row> rows) {
        return new Blend(rows.stream().map(row -> line(brief, row)).toList(), BigFraction.ONE);
    }

    private static Blend.Line line(Brief brief, Row row) {
        var share = BigFraction.of(row.percent(), 100);
        var offer = (brief.candidates().contains(row.ingredient()) ? brief : everything(brief))
                .offersFor(row.ingredient()).stream()
                        .filter(each -> each.supplier().equals(row.supplier()))
                        .findFirst()
                        .orElseThrow();
        var usable = brief.set().ingredient(row.ingredient()).usable();
        return new Blend.Line(
                new Use(row.ingredient(), row.stage()),
                offer,
                share,
                share.multiply(offer.pricePerKg()).divide(usable));
    }

    private static Brief everything(Brief brief) {
        return brief.exclusions().stream().reduce(brief, Brief::allowing, (a, b) -> b);
    }

    private Brief brief() throws IOException {
        return brief("");
    }

    private Brief rules(String rule) throws IOException {
        return brief("\"rules\": [" + rule + "],");
    }

    private Brief brief(String more) throws IOException {
        return brief(more, "{\"name\": \"fat\", \"property\": \"FAT\", \"min\": \"20 %\"}");
    }

    private Brief brief(String more, String bound) throws IOException {
        var comma = more.isBlank() || more.strip().endsWith(",") ? "" : ",";
        var file = Files.writeString(folder.resolve("brief.json"), """
                {"title": "small", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD",
                 "batch": "10 kg", %s%s
                 "stages": [{"id": "fat", "title": "fat", "ingredients": ["oil", "bean"]},
                            {"id": "mix", "ingredients": ["bean"]}],
                 "bounds": [%s]}
                """.formatted(more, comma, bound));
        var reading = Documents.readBrief(file, Overrides.NONE);
        if (reading instanceof Reading.Rejected<Brief> rejected) {
            throw new AssertionError(rejected.problems().toString());
        }
        return ((Reading.Accepted<Brief>) reading).value();
    }
}
