package panade.report.plate;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import panade.quantity.Decimal;
import panade.report.Block;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.result.PanelResult;
import panade.result.PanelResult.Allergens;
import panade.result.PanelResult.Carried;
import panade.result.PanelResult.Compliance;
import panade.result.PanelResult.Format;
import panade.result.PanelResult.Missing;
import panade.result.PanelResult.Row;
import panade.result.PanelResult.Score;
import panade.result.PanelResult.Sourced;
import panade.result.PanelResult.Statement;
import panade.result.PanelResult.Unclear;

/** The words of a label's draft, from a result made by hand. */
class PanelReportTest {
    private static final Allergens SOY = new Allergens(
            "Contains: Soy.",
            List.of(new Carried("Soy", List.of("Tofu", "Miso"))),
            List.of(new Carried("celery", List.of("Stock"))),
            List.of("Broth"),
            List.of(),
            "Contains: Soy. The rest is open.");

    @Test
    void lines_that_are_not_known_for_the_same_reason_stand_together() {
        var rows = List.of(
                row("Fat", BigFraction.of(5, 3), List.of(), false),
                row("Zinc", null, List.of("Tofu"), false),
                row("Iron", null, List.of("Tofu", "Miso"), true),
                row("Iodine", null, List.of("Tofu"), false));
        assertThat(points(panel(rows, SOY, List.of())))
                .containsSequence(
                        "Not known: Zinc, Iodine; no value for Tofu.",
                        "Not known: Iron; no ingredient of the blend states it.",
                        "a note");
    }

    @Test
    void a_row_shows_what_is_printed_beside_what_is_exact() {
        var rows = List.of(row("Fat", BigFraction.of(5, 3), List.of(), false));
        assertThat(tables(panel(rows, SOY, List.of())).get(0).rows())
                .containsExactly(List.of("  Fat", "2g", "3%", "1.5g", "1.667"));
        assertThat(paragraphs(panel(rows, SOY, List.of())))
                .contains("Serving: 113 g, raw; about 4 servings in a package.");
    }

    @Test
    void allergens_are_told_with_what_carries_them() {
        assertThat(points(panel(List.of(), SOY, List.of())))
                .contains(
                        "Soy: from Tofu; Miso",
                        "celery: from Stock (stated, not on this law's list)",
                        "not known for Broth");
    }

    @Test
    void an_unclear_allergen_stops_the_draft() {
        var unclear = new Unclear("tofu", "nutz", "set.json:4", "\"nutz\" is on no list", "Expected \"nuts\".");
        var allergens = new Allergens("", List.of(), List.of(), List.of(), List.of(unclear), "");
        var blocks = panel(List.of(), allergens, List.of());
        assertThat(blocks).hasSize(2);
        assertThat(points(blocks)).containsExactly("set.json:4: \"nutz\" is on no list. Expected \"nuts\".");
    }

    @Test
    void a_score_that_was_cut_is_told_uncut_as_well() {
        assertThat(points(panel(List.of(), SOY, List.of())))
                .contains(
                        "PDCAAS: 1.00 (1.25 before it is cut), limited by lysine. Pattern for children: FAO.",
                        "DIAAS: not known. Missing: Tofu (LYS, TRP). Were those none, it would be 0.40. Pattern for"
                                + " adults: FAO.");
    }

    @Test
    void room_is_rounded_down_and_little_of_it_is_called_tight() {
        var lines = List.of(
                compliance("Fat", new BigDecimal("0.5"), new BigDecimal("1.99"), false),
                compliance("Salt", new BigDecimal("0.5"), new BigDecimal("2"), false),
                compliance("Sugar", new BigDecimal("0.5"), new BigDecimal("-0.1"), true),
                compliance("Iron", null, null, false));
        var blocks = panel(List.of(), SOY, lines);
        assertThat(tables(blocks).get(1).rows())
                .extracting(row -> row.get(0) + " " + row.get(6) + " " + row.get(7))
                .containsExactly("Fat 1.9 tight", "Salt 2.0 ", "Sugar -0.1 outside");
        assertThat(points(blocks))
                .contains("Iron: not known; no spread of Tofu")
                .containsOnlyOnce("Tolerance: 21 CFR.");
    }

    private static Row row(String name, @Nullable BigFraction value, List<String> unknownFor, boolean forAll) {
        return new Row(name, name, 1, "g", value, "1.5g", value, "2g", "3%", unknownFor, forAll);
    }

    private static Compliance compliance(
            String name, @Nullable BigDecimal spread, @Nullable BigDecimal room, boolean outside) {
        var unknown = spread == null ? List.of("Tofu") : List.<String>of();
        return new Compliance(
                name, name, "2g", null, BigFraction.of(3), BigFraction.of(2), spread, room, unknown, "21 CFR", outside);
    }

    private static List<Block> panel(List<Row> rows, Allergens allergens, List<Compliance> compliance) {
        return PanelReport.of(new PanelResult(
                        true,
                        Format.US,
                        "113 g",
                        "about 4",
                        rows,
                        new Statement("tofu.", List.of()),
                        allergens,
                        List.of(
                                new Score(
                                        "PDCAAS",
                                        BigFraction.ONE,
                                        Decimal.of("1.25"),
                                        "lysine",
                                        Decimal.of("1.25"),
                                        List.of(),
                                        "FAO",
                                        "children"),
                                new Score(
                                        "DIAAS",
                                        null,
                                        null,
                                        null,
                                        Decimal.of("0.4"),
                                        List.of(new Missing("Tofu", List.of("LYS", "TRP"))),
                                        "FAO",
                                        "adults")),
                        compliance,
                        List.of("a note"),
                        List.of(new Sourced("The net quantity.", "law")),
                        List.of(),
                        List.of(),
                        "Filling",
                        "the law",
                        "% Daily Value",
                        "Of the blend.",
                        BigFraction.of(113)))
                .blocks();
    }

    private static List<String> points(List<Block> blocks) {
        return blocks.stream()
                .filter(Points.class::isInstance)
                .flatMap(block -> ((Points) block).lines().stream())
                .toList();
    }

    private static List<String> paragraphs(List<Block> blocks) {
        return blocks.stream()
                .filter(Paragraph.class::isInstance)
                .map(block -> ((Paragraph) block).text())
                .toList();
    }

    private static List<Table> tables(List<Block> blocks) {
        return blocks.stream()
                .filter(Table.class::isInstance)
                .map(Table.class::cast)
                .toList();
    }
}
