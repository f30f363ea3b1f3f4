package panade.report;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.explain.Explanation;
import panade.explain.Explanation.Limit;
import panade.explain.Explanation.PropertyValue;
import panade.explain.Explanation.Touch;
import panade.explain.Explanation.Unused;
import panade.plan.Outcome.Blended;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;

/** Words the least-cost blend and its reasons. */
public final class BlendReport {
    private final Blended outcome;
    private final Brief brief;
    private final Blend blend;
    private final Explanation explanation;
    private final BigFraction batchKg;

    private BlendReport(Blended outcome) {
        this.outcome = outcome;
        this.brief = outcome.brief();
        this.blend = outcome.blend();
        this.explanation = outcome.explanation();
        this.batchKg = brief.batch().base();
    }

    /** The report on a blend. */
    public static ReportDocument of(Blended outcome) {
        return new BlendReport(outcome).document();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict()));
        blocks.add(new Paragraph(proof()));
        blocks.add(new Heading("What goes in: " + brief.batch().text() + " batch, stage by stage"));
        blocks.add(new Table(lineColumns(), lineRows()));
        var binding = new BindingWords(money()).points(explanation.limits());
        blocks.add(new Heading("What holds the cost up"));
        blocks.add(binding.isEmpty() ? new Paragraph("No bound binds.") : new Points(binding));
        blocks.add(new Heading("Every bound"));
        blocks.add(new Table(
                limitColumns(),
                explanation.limits().stream().map(BlendReport::limitRow).toList()));
        addUnused(blocks);
        blocks.add(new Heading("What the blend holds"));
        blocks.add(new Table(
                propertyColumns(),
                explanation.properties().stream().map(BlendReport::propertyRow).toList()));
        blocks.add(new Points(Cautions.of(brief, blend)));
        return new ReportDocument(brief.title(), blocks);
    }

    private String money() {
        return brief.currency();
    }

    private String verdict() {
        var perKg = blend.costPerKg();
        var words = "Cheapest blend: " + spaced(Figures.money(Figures.perPound(perKg))) + "/lb, "
                + spaced(Figures.money(perKg)) + "/kg; the " + brief.batch().text() + " batch costs "
                + spaced(Figures.cash(perKg.multiply(batchKg))) + ". Ingredients only.";
        var target = brief.target();
        if (target == null) {
            return words;
        }
        var spare = Figures.perPound(target.perKg().subtract(perKg));
        var distance = spaced(Figures.money(spare.abs())) + "/lb";
        return words + " Target " + target.text() + ": "
                + (spare.signum() >= 0 ? "met, with " + distance + " to spare." : "missed by " + distance + ".");
    }

    private String spaced(String figure) {
        return money().isEmpty() ? figure : figure + " " + money();
    }

    private String proof() {
        var words = "Proved: no blend that keeps every bound costs less (checked in exact fractions; found by "
                + outcome.proof().engine() + ").";
        return explanation.unique() ? words : words + " Other blends cost exactly the same: compare costs, not shares.";
    }

    private static List<Column> lineColumns() {
        return List.of(
                new Column("Stage", false),
                new Column("Ingredient", false),
                new Column("Supplier", false),
                new Column("Grams", true),
                new Column("Share %", true),
                new Column("Cost %", true));
    }

    private List<List<String>> lineRows() {
        var rows = new ArrayList<List<String>>();
        var stage = "";
        for (var line : blend.lines()) {
            var title = stageTitle(line.use().stage());
            rows.add(List.of(
                    title.equals(stage) ? "" : title,
                    brief.set().ingredient(line.use().ingredient()).name(),
                    line.offer().supplier(),
                    Figures.grams(line.share().multiply(batchKg)),
                    Figures.percent(line.share()),
                    Figures.percent(costShare(line))));
            stage = title;
        }
        return rows;
    }

    private BigFraction costShare(Blend.Line line) {
        var total = blend.costPerKg();
        return total.signum() == 0 ? BigFraction.ZERO : line.costPerKg().divide(total);
    }

    private String stageTitle(String id) {
        return brief.stages().stream()
                .filter(stage -> stage.id().equals(id))
                .map(Stage::title)
                .findFirst()
                .orElse(id);
    }

    private static List<Column> limitColumns() {
        return List.of(
                new Column("Bound", false),
                new Column("Value", true),
                new Column("Least", true),
                new Column("Most", true),
                new Column("Margin", true),
                new Column("Unit", false),
                new Column("", false));
    }

    private static List<String> limitRow(Limit limit) {
        var value = limit.value();
        return List.of(
                limit.name(),
                value == null ? "none" : Figures.significant(value, 4),
                limit.min() == null ? "" : Figures.significant(limit.min(), 5),
                limit.max() == null ? "" : Figures.significant(limit.max(), 5),
                margin(limit),
                limit.unit().symbol(),
                limit.touch() == Touch.NONE ? "" : "binds");
    }

    /** How far the value is from the nearer limit. */
    private static String margin(Limit limit) {
        var value = limit.value();
        if (value == null) {
            return "";
        }
        var below = limit.min() == null ? null : value.subtract(limit.min());
        var above = limit.max() == null ? null : limit.max().subtract(value);
        var nearer = below == null || (above != null && above.compareTo(below) < 0) ? above : below;
        return nearer == null ? "" : Figures.significant(nearer, 3);
    }

    private void addUnused(List<Block> blocks) {
        if (explanation.unused().isEmpty()) {
            return;
        }
        blocks.add(new Heading("Not used, and the price as bought at which each would come in"));
        var columns = List.of(
                new Column("Ingredient", false),
                new Column("Cheapest offer", false),
                new Column("Now /lb", true),
                new Column("Comes in below /lb", true));
        blocks.add(new Table(
                columns, explanation.unused().stream().map(this::unusedRow).toList()));
    }

    private List<String> unusedRow(Unused unused) {
        var entersAt = unused.entersAt();
        return List.of(
                brief.set().ingredient(unused.ingredient()).name(),
                unused.supplier(),
                Figures.money(Figures.perPound(unused.pricePerKg())),
                entersAt == null ? "at no price" : Figures.money(Figures.perPound(entersAt)));
    }

    private static List<Column> propertyColumns() {
        return List.of(
                new Column("Property", false),
                new Column("", false),
                new Column("Value", true),
                new Column("Unit", false));
    }

    private static List<String> propertyRow(PropertyValue property) {
        var value = property.value();
        return List.of(
                property.property(),
                property.title(),
                value == null ? "not known" : Figures.significant(value, 4),
                property.unit().symbol());
    }
}
