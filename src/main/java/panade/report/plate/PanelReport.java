package panade.report.plate;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.mapping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Decimal;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.result.PanelResult;
import panade.result.PanelResult.Carried;
import panade.result.PanelResult.Missing;
import panade.result.PanelResult.Row;
import panade.result.PanelResult.Score;
import panade.result.PanelResult.Sourced;

/** Words the draft of a label, with the arithmetic behind it. */
public final class PanelReport {
    /** As many names as are told one by one; of more, how many there are. */
    private static final int FEW = 4;

    private final PanelResult panel;

    private PanelReport(PanelResult panel) {
        this.panel = panel;
    }

    /** The draft. */
    public static ReportDocument of(PanelResult panel) {
        return new PanelReport(panel).document();
    }

    private ReportDocument document() {
        var title = panel.title() + ": draft of the label";
        if (!panel.allergens().unclear().isEmpty()) {
            return new ReportDocument(title, stopped());
        }
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph("DRAFT, not a finished label. " + panel.subject()));
        blocks.add(new Heading("Nutrition, " + panel.law()));
        blocks.add(new Paragraph(serving()));
        blocks.add(rows());
        blocks.add(new Points(Stream.concat(unknown(), panel.notes().stream()).toList()));
        blocks.add(new Heading("Ingredient statement, by weight as added"));
        blocks.add(new Paragraph("Ingredients: " + panel.statement().text()));
        blocks.addAll(allergens());
        blocks.add(new Heading("Protein quality"));
        blocks.add(new Points(
                panel.proteinQuality().stream().map(PanelReport::words).toList()));
        blocks.addAll(ComplianceTable.of(panel.compliance()));
        blocks.add(new Heading("What a finished label still needs"));
        blocks.add(new Points(sourced(panel.stillNeeded())));
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(sourced(panel.cautions())));
        return Remarks.on(new ReportDocument(title, blocks), panel.remarks());
    }

    private static List<String> sourced(List<Sourced> cautions) {
        return cautions.stream()
                .map(caution -> caution.text() + " [" + caution.source() + "]")
                .toList();
    }

    /** No label is drafted while an allergen's word means nothing to the law. */
    private List<Block> stopped() {
        return List.of(
                new Paragraph("No label can be drafted before these words are settled:"),
                new Points(panel.allergens().unclear().stream()
                        .map(each -> each.place() + ": " + each.what() + ". " + each.advice())
                        .toList()));
    }

    private String serving() {
        if (panel.serving() == null) {
            return "No serving is stated: say \"serving\" in the brief or --serving 113g.";
        }
        var pack = panel.servings() == null ? "" : "; " + panel.servings() + " servings in a package";
        return "Serving: " + panel.serving() + ", raw" + pack + ".";
    }

    private Table rows() {
        var columns = new ArrayList<Column>();
        columns.add(new Column("", false));
        boolean served = panel.serving() != null;
        if (served) {
            columns.add(new Column("per serving", true));
        }
        columns.add(new Column(panel.percentHeading(), true));
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
        cells.add(Objects.requireNonNullElse(row.percent(), ""));
        cells.add(row.per100gText());
        cells.add(row.per100g() == null ? "" : exact(row.per100g()));
        return cells;
    }

    private static String exact(BigFraction value) {
        return Decimal.round(value, 3).stripTrailingZeros().toPlainString();
    }

    /** Why lines are not known, those for the same reason together. */
    private Stream<String> unknown() {
        var names = panel.rows().stream()
                .filter(row -> row.per100g() == null)
                .collect(groupingBy(PanelReport::reason, LinkedHashMap::new, mapping(Row::name, joining(", "))));
        return names.entrySet().stream().map(each -> "Not known: " + each.getValue() + "; " + each.getKey() + ".");
    }

    private static String reason(Row row) {
        return row.unknownForAll() ? "no ingredient of the blend states it" : "no value for " + some(row.unknownFor());
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
        return each.name() + ": from " + String.join("; ", each.from());
    }

    private static String words(Score score) {
        var pattern = "Pattern for " + score.patternFor() + ": " + score.pattern() + ".";
        var cut = score.score();
        var whole = score.uncut();
        if (cut == null || whole == null) {
            return score.name() + ": not known. " + missing(score) + pattern;
        }
        return score.name() + ": " + figure(cut)
                + (whole.equals(cut) ? "" : " (" + figure(whole) + " before it is cut)") + ", limited by "
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
