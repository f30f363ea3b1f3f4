package panade.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.origin.Remark;
import panade.label.Allergens.Carried;
import panade.label.Caution;
import panade.label.Panel;
import panade.label.Panel.Row;
import panade.label.nutrition.ProteinQuality.Missing;
import panade.label.nutrition.ProteinQuality.Score;
import panade.quantity.Decimal;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;

/** Words the draft of a label, with the arithmetic behind it. */
public final class PanelReport {
    /** As many names as are told one by one; of more, how many there are. */
    private static final int FEW = 4;

    private final Panel panel;

    private PanelReport(Panel panel) {
        this.panel = panel;
    }

    /**
     * The draft.
     *
     * @param what which blend it is of, in a sentence
     * @param remarks on the brief that the blend was made from
     */
    public static ReportDocument of(Panel panel, String what, List<Remark> remarks) {
        return new PanelReport(panel).document(what, remarks);
    }

    private ReportDocument document(String what, List<Remark> remarks) {
        var title = panel.title() + ": draft of the label";
        if (!panel.allergens().strange().isEmpty()) {
            return new ReportDocument(title, stopped());
        }
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph("DRAFT, not a finished label. " + what));
        blocks.add(new Heading("Nutrition, " + panel.request().format().law()));
        blocks.add(new Paragraph(serving()));
        blocks.add(rows());
        blocks.add(new Points(Stream.concat(unknown(), panel.notes().stream()).toList()));
        blocks.add(new Heading("Ingredient statement, by weight as added"));
        blocks.add(new Paragraph("Ingredients: " + panel.statement().text()));
        blocks.addAll(allergens());
        blocks.add(new Heading("Protein quality"));
        blocks.add(new Points(
                List.of(words(panel.protein().pdcaas()), words(panel.protein().diaas()))));
        blocks.addAll(ComplianceTable.of(panel.compliance()));
        blocks.add(new Heading("What a finished label still needs"));
        blocks.add(new Points(sourced(panel.stillNeeded())));
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(sourced(panel.cautions())));
        return Remarks.under(new ReportDocument(title, blocks), remarks);
    }

    private static List<String> sourced(List<Caution> cautions) {
        return cautions.stream()
                .map(caution -> caution.text() + " [" + caution.source() + "]")
                .toList();
    }

    /** No label is drafted while an allergen's word means nothing to the law. */
    private List<Block> stopped() {
        return List.of(
                new Paragraph("No label can be drafted before these words are settled:"),
                new Points(panel.allergens().strange().stream()
                        .map(each -> each.place() + ": " + each.what() + ". " + each.advice())
                        .toList()));
    }

    private String serving() {
        if (panel.serving() == null) {
            return "No serving is stated: say \"serving\" in the brief or --serving 113g.";
        }
        var pack = panel.servings().isEmpty() ? "" : "; " + panel.servings() + " servings in a package";
        return "Serving: " + panel.servingGrams() + " g, raw" + pack + ".";
    }

    private Table rows() {
        var columns = new ArrayList<Column>();
        columns.add(new Column("", false));
        boolean served = panel.serving() != null;
        if (served) {
            columns.add(new Column("per serving", true));
        }
        columns.add(new Column(panel.request().format().percent(), true));
        columns.add(new Column("per 100 g", true));
        columns.add(new Column("exact, 100 g", true));
        return new Table(
                columns, panel.rows().stream().map(row -> cells(row, served)).toList());
    }

    private static List<String> cells(Row row, boolean served) {
        var cells = new ArrayList<String>();
        cells.add("  ".repeat(row.level()) + row.name());
        if (served) {
            cells.add(row.perServingText());
        }
        cells.add(row.percent());
        cells.add(row.per100gText());
        cells.add(row.per100g() == null ? "" : exact(row.per100g()));
        return cells;
    }

    private static String exact(BigFraction value) {
        return Decimal.round(value, 3).stripTrailingZeros().toPlainString();
    }

    /** Why lines are not known, those for the same reason together. */
    private Stream<String> unknown() {
        var reasons = panel.unknown().stream().map(this::reason).distinct();
        return reasons.map(reason -> "Not known: "
                + String.join(
                        ", ",
                        panel.unknown().stream()
                                .filter(row -> reason(row).equals(reason))
                                .map(Row::name)
                                .toList())
                + "; " + reason + ".");
    }

    private String reason(Row row) {
        return row.unknownFor().size() == panel.ingredients()
                ? "no ingredient of the blend states it"
                : "no value for " + some(row.unknownFor());
    }

    static String some(List<String> names) {
        return names.size() <= FEW
                ? String.join("; ", names)
                : String.join("; ", names.subList(0, FEW - 1)) + " and " + (names.size() - FEW + 1) + " others";
    }

    private List<Block> allergens() {
        var allergens = panel.allergens();
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(allergens.sentence()));
        var points = new ArrayList<String>();
        allergens.named().forEach(each -> points.add(words(each)));
        allergens.others().forEach(each -> points.add(words(each) + " (stated, not on this law's list)"));
        if (!allergens.unknownFor().isEmpty()) {
            points.add("not known for " + String.join(", ", allergens.unknownFor()));
        }
        if (!points.isEmpty()) {
            blocks.add(new Points(points));
        }
        return blocks;
    }

    private static String words(Carried each) {
        return each.name() + ": from " + String.join("; ", each.carriers());
    }

    private static String words(Score score) {
        var pattern =
                "Pattern for " + score.pattern().name() + ": " + score.pattern().source() + ".";
        var cut = score.cut();
        if (cut == null) {
            return score.name() + ": not known. " + missing(score) + pattern;
        }
        var whole = score.value();
        boolean isCut = whole != null && !whole.equals(cut);
        return score.name() + ": " + figure(cut)
                + (isCut && whole != null ? " (" + figure(whole) + " before it is cut)" : "") + ", limited by "
                + score.limiting() + ". " + pattern;
    }

    private static String missing(Score score) {
        if (score.missing().isEmpty()) {
            return "There is no protein. ";
        }
        var names = score.missing().stream().map(PanelReport::words).toList();
        var least = score.atLeast();
        var known = least == null || least.signum() == 0 ? "" : "Were those none, it would be " + figure(least) + ". ";
        return "Missing: " + some(names) + ". " + known;
    }

    private static String words(Missing missing) {
        return missing.ingredient() + " (" + values(missing.values()) + ")";
    }

    private static String values(List<String> names) {
        return names.size() <= FEW
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, FEW - 1)) + " and " + (names.size() - FEW + 1) + " more";
    }

    private static String figure(BigFraction value) {
        return Decimal.round(value, 2).toPlainString();
    }
}
