package panade.label.nutrition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import panade.label.PanelRequest;
import panade.quantity.Decimal;
import panade.testing.LabelKitchen;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Protein scores against worked cases; each names where its amino acids were published. */
class ProteinQualityTest {
    private static final Map<String, String> NAMES = Map.of(
            "LYS",
            "lysine",
            "SAA",
            "methionine and cystine",
            "TRP",
            "tryptophan",
            "HIS",
            "histidine",
            "THR",
            "threonine");

    /** The cases print four digits of scores worked out from four digits of each amino acid. */
    private static final BigDecimal HAIR = new BigDecimal("0.0001");

    @TempDir
    private Path folder;

    static Stream<JsonNode> cases() throws URISyntaxException {
        var file = Path.of(
                ProteinQualityTest.class.getResource("/label/pdcaas.json").toURI());
        return JsonMapper.builder().build().readTree(file.toFile()).get("cases").valueStream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void a_mixture_scores_as_worked_out(JsonNode worked) throws IOException {
        var ingredients = new ArrayList<String>();
        var parts = new LinkedHashMap<String, String>();
        worked.get("items").valueStream().forEach(item -> {
            var id = "food-" + ingredients.size();
            ingredients.add(food(id, item));
            parts.put(id, item.get("weight").asString());
        });
        var kitchen = LabelKitchen.of(folder, ingredients, "");
        var score = kitchen.panel(parts, PanelRequest.of(Format.US)).protein().pdcaas();
        assertThat(score.missing()).isEmpty();
        assertThat(rounded(score.value())).isCloseTo(plain(worked, "uncut"), within(HAIR));
        assertThat(rounded(score.cut())).isCloseTo(plain(worked, "score"), within(HAIR));
        assertThat(score.limiting()).isEqualTo(NAMES.get(worked.get("limiting").asString()));
    }

    private static BigDecimal rounded(@Nullable BigFraction value) {
        return Objects.requireNonNull(value).bigDecimalValue(6, RoundingMode.HALF_UP);
    }

    private static BigDecimal plain(JsonNode node, String field) {
        return new BigDecimal(node.get(field).asString());
    }

    /** Amino acids that a case leaves out are set where they cannot limit. */
    private static String food(String id, JsonNode item) {
        var protein = Decimal.of(item.get("protein").asString());
        var values = new StringBuilder("\"PROCNT\": " + item.get("protein").asString());
        var given = item.get("aminoAcids");
        for (var name : List.of("HIS", "ILE", "LEU", "LYS", "SAA", "AAA", "THR", "TRP", "VAL")) {
            var perGram = given.has(name) ? Decimal.of(given.get(name).asString()) : BigFraction.of(300);
            values.append(", \"").append(name.equals("SAA") ? "AAS" : name).append("\": ");
            values.append(perGram.multiply(protein).bigDecimalValue(9, RoundingMode.HALF_UP));
        }
        var digested = Decimal.of(item.get("digestibility").asString()).multiply(100);
        return "{\"id\": \"" + id + "\", \"values\": {" + values + "}, \"digestibility\": {\"PROCNT\": \""
                + digested.bigDecimalValue(3, RoundingMode.HALF_UP) + " %\"}}";
    }

    private static final String ACIDS =
            "\"HIS\": 500, \"ILE\": 900, \"LEU\": 1500, \"LYS\": 400, \"MET\": 300, \"CYS\": 300, \"PHE\": 900,"
                    + " \"TYR\": 600, \"THR\": 600, \"TRP\": 200, \"VAL\": 900";

    private static String food(String id, String values, String digestibility) {
        return "{\"id\": \"" + id + "\", \"values\": {\"PROCNT\": 20, " + values + "}, \"digestibility\": {"
                + digestibility + "}}";
    }

    /** Invented figures; the ratio is 400 mg in 20 g against 58 mg/g, by hand. */
    @Test
    void taking_one_value_away_makes_the_score_not_known_and_names_the_ingredient() throws IOException {
        var whole = food("bean", ACIDS, "\"PROCNT\": \"80 %\"");
        var lacking = food("grain", ACIDS.replace("\"TRP\": 200, ", ""), "\"PROCNT\": \"90 %\"");
        var kitchen = LabelKitchen.of(folder, List.of(whole, lacking), "");
        var known =
                kitchen.panel(Map.of("bean", "1"), PanelRequest.of(Format.US)).protein();
        assertThat(known.pdcaas().value()).isEqualTo(Decimal.of("20").divide(58).multiply(Decimal.of("0.8")));
        assertThat(known.pdcaas().limiting()).isEqualTo("lysine");
        var panel = kitchen.panel(Map.of("bean", "1", "grain", "1"), PanelRequest.of(Format.US));
        assertThat(panel.protein().pdcaas().value()).isNull();
        assertThat(panel.protein().pdcaas().missing())
                .containsExactly(new ProteinQuality.Missing("grain", List.of("tryptophan")));
        assertThat(LabelKitchen.row(panel, "PROCNT").percent()).isEmpty();
    }

    @Test
    void the_score_told_when_something_is_missing_is_the_least_it_can_be() throws IOException {
        var whole = food("bean", ACIDS, "\"PROCNT\": \"80 %\"");
        var lacking = food("grain", ACIDS.replace("\"LYS\": 400, ", ""), "\"PROCNT\": \"90 %\"");
        var kitchen = LabelKitchen.of(folder, List.of(whole, lacking), "");
        var score = kitchen.panel(Map.of("bean", "1", "grain", "1"), PanelRequest.of(Format.US))
                .protein()
                .pdcaas();
        assertThat(score.atLeast()).isEqualTo(Decimal.of("10").divide(58).multiply(Decimal.of("0.85")));
    }

    /** 21 CFR 101.9(c)(7)(ii): the per cent is of the protein that counts, 20 g x 0.2759 of 50 g. */
    @Test
    void the_per_cent_of_protein_is_of_what_counts() throws IOException {
        var kitchen = LabelKitchen.of(
                folder, List.of(food("bean", ACIDS, "\"PROCNT\": \"80 %\"")), "\"serving\": \"100 g\", ");
        var row = LabelKitchen.row(kitchen.panel(Map.of("bean", "1"), PanelRequest.of(Format.US)), "PROCNT");
        assertThat(row.percent()).isEqualTo("11%");
        assertThat(row.perServingText()).isEqualTo("20 g");
    }

    /** FAO 2013: each amino acid by its own ileal digestibility, the protein's where that is not known; never cut. */
    @Test
    void diaas_digests_each_amino_acid_on_its_own() throws IOException {
        var kitchen =
                LabelKitchen.of(folder, List.of(food("bean", ACIDS, "\"PROCNT\": \"80 %\", \"LYS\": \"50 %\"")), "");
        var score = kitchen.panel(Map.of("bean", "1"), PanelRequest.of(Format.US))
                .protein()
                .diaas();
        assertThat(score.value()).isEqualTo(Decimal.of("10").divide(48));
        assertThat(score.limiting()).isEqualTo("lysine");
    }

    @Test
    void what_brings_no_protein_needs_no_amino_acids() throws IOException {
        var water = "{\"id\": \"water\", \"values\": {\"PROCNT\": 0}}";
        var kitchen = LabelKitchen.of(folder, List.of(food("bean", ACIDS, "\"PROCNT\": \"80 %\""), water), "");
        var pdcaas = kitchen.panel(Map.of("bean", "1", "water", "3"), PanelRequest.of(Format.US))
                .protein()
                .pdcaas();
        assertThat(pdcaas.missing()).isEmpty();
        assertThat(pdcaas.value()).isEqualTo(Decimal.of("20").divide(58).multiply(Decimal.of("0.8")));
    }
}
