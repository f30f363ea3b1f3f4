package panade.report.trial;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Decimal;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.result.trial.FitResult;
import panade.result.trial.FitResult.PredictionResult;
import panade.result.trial.FittedResult;
import panade.result.trial.FittedResult.LeverResult;

/** Words what trials teach, first as a cook would say it and last as a statistician would. */
public final class FitReport {
    private final FitResult result;

    private FitReport(FitResult result) {
        this.result = result;
    }

    /** The report. */
    public static ReportDocument of(FitResult result) {
        return new FitReport(result).document();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph("Shares are of the whole batch. \"Give or take\" and ranges hold with "
                + percent(result.sure()) + " % probability, as far as the trials tell."));
        if (!result.at().isEmpty()) {
            blocks.add(new Heading("Predicted for the next batch"));
            blocks.addAll(predictions());
        }
        var shared = shared();
        result.responses().forEach(each -> blocks.addAll(response(each, shared)));
        if (!shared.isEmpty()) {
            blocks.add(new Heading("What these trials do not tell of any response"));
            blocks.add(new Points(shared));
        }
        blocks.addAll(statistics());
        return Remarks.on(new ReportDocument(result.title() + ": what the trials taught", blocks), result.remarks());
    }

    private List<Block> statistics() {
        var blocks = new ArrayList<Block>();
        result.responses().stream()
                .filter(each -> each.residual() != null)
                .forEach(each -> blocks.addAll(FitStatistics.of(each)));
        if (!blocks.isEmpty()) {
            blocks.add(
                    0,
                    new Paragraph("Coefficients are for levers in shares of the whole, or in their own unit where they"
                            + " are no shares."));
            blocks.add(0, new Heading("For whoever wants the statistics"));
        }
        return blocks;
    }

    /** Remarks on every one of several responses, which are told once. */
    private List<String> shared() {
        var responses = result.responses();
        return responses.size() < 2
                ? List.of()
                : responses.get(0).remarks().stream()
                        .filter(remark -> responses.stream()
                                .allMatch(each -> each.remarks().contains(remark)))
                        .toList();
    }

    private List<Block> predictions() {
        var rows = result.at().stream()
                .map(each -> List.of(
                        each.formula(),
                        each.response() + (each.unit().isEmpty() ? "" : ", " + each.unit()),
                        Figures.significant(each.mean(), 4),
                        end(each.lower(), RoundingMode.FLOOR),
                        end(each.upper(), RoundingMode.CEILING)))
                .toList();
        var blocks = new ArrayList<Block>();
        blocks.add(new Table(
                List.of(
                        new Column("formula", false),
                        new Column("response", false),
                        new Column("expected", true),
                        new Column("from", true),
                        new Column("to", true)),
                rows));
        var outside = result.at().stream()
                .filter(each -> !each.outside().isEmpty())
                .map(FitReport::outside)
                .toList();
        if (!outside.isEmpty()) {
            blocks.add(new Points(outside));
        }
        return blocks;
    }

    private static String outside(PredictionResult at) {
        return at.response() + " of " + at.formula() + ": " + String.join(", ", at.outside())
                + (at.outside().size() == 1 ? " lies" : " lie")
                + " beyond what was tried, so this is a guess.";
    }

    private static String end(@Nullable BigDecimal value, RoundingMode outward) {
        return value == null ? "not known" : Figures.significant(Decimal.of(value), 4, outward);
    }

    private List<Block> response(FittedResult response, List<String> shared) {
        var blocks = new ArrayList<Block>();
        blocks.add(new Heading(response.name() + " (" + counted(response.trials()) + ")"));
        var points = new ArrayList<String>();
        response.levers().stream()
                .filter(lever -> lever.step() != null)
                .forEach(lever -> points.add(lever(lever, response.unit(), isBent(response))));
        var middle = response.middle();
        if (middle != null) {
            points.add("in the middle of what was tried: "
                    + with(Figures.significant(middle.mean(), 4), response.unit()) + range(middle, response.unit()));
        }
        if (!response.tasters().isEmpty()) {
            points.add("tasters against their average: "
                    + response.tasters().stream()
                            .map(each -> each.name() + " " + signed(each.level()))
                            .collect(Collectors.joining(", ")));
        }
        if (!points.isEmpty()) {
            blocks.add(new Points(points));
        }
        var own = response.remarks().stream()
                .filter(remark -> !shared.contains(remark))
                .toList();
        if (!own.isEmpty()) {
            blocks.add(new Paragraph("What these trials do not tell:"));
            blocks.add(new Points(own));
        }
        return blocks;
    }

    private static String counted(int trials) {
        return trials + (trials == 1 ? " trial" : " trials");
    }

    private static boolean isBent(FittedResult response) {
        return response.terms().stream().anyMatch(term -> term.of().size() > 1);
    }

    private static String range(FittedResult.Middle middle, String unit) {
        return middle.lower() == null
                ? ""
                : "; the next batch from " + end(middle.lower(), RoundingMode.FLOOR) + " to "
                        + with(end(middle.upper(), RoundingMode.CEILING), unit);
    }

    private static String lever(LeverResult lever, String unit, boolean bent) {
        var step = Objects.requireNonNull(lever.step());
        var change = Objects.requireNonNull(lever.change());
        return "each " + with(Figures.significant(step, 3), lever.unit()) + " more " + lever.name()
                + (lever.replacing() ? ", the others making room" : "") + ": "
                + change(change, lever.giveOrTake(), unit)
                + (bent ? ", in the middle of the trials" : "")
                + "; tried from "
                + Figures.significant(lever.from(), 3) + " to "
                + with(Figures.significant(lever.to(), 3), lever.unit());
    }

    private static String change(BigFraction change, @Nullable BigDecimal giveOrTake, String unit) {
        if (giveOrTake == null) {
            return moved(Figures.significant(change.abs(), 3), change, unit) + ", how sure is not known";
        }
        var around = Decimal.significant(Decimal.of(giveOrTake), 2, RoundingMode.CEILING);
        var figure = around.signum() == 0
                ? Figures.significant(change.abs(), 3)
                : Decimal.round(change.abs(), Math.max(0, around.scale())).toPlainString();
        var words = moved(figure, change, unit) + ", give or take " + around.toPlainString();
        boolean apart = change.abs().compareTo(Decimal.of(giveOrTake)) > 0;
        return apart ? words : "not told apart from no change (" + words + ")";
    }

    private static String moved(String figure, BigFraction change, String unit) {
        return with(figure, unit.equals("%") ? "points" : unit) + (change.signum() < 0 ? " less" : " more");
    }

    private static String signed(BigFraction level) {
        return (level.signum() < 0 ? "-" : "+") + Decimal.round(level.abs(), 1).toPlainString();
    }

    static String with(String figure, String unit) {
        return unit.isEmpty() ? figure : figure + " " + unit;
    }

    static String percent(BigFraction share) {
        return Figures.significant(share.multiply(100), 4);
    }
}
