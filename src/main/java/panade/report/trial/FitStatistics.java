package panade.report.trial;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.result.trial.FittedResult;
import panade.result.trial.FittedResult.TermResult;

/** Words the figures by which a statistician judges a fit. */
final class FitStatistics {
    private FitStatistics() {}

    static List<Block> of(FittedResult response) {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(response.name() + ": " + response.form()
                + (response.chosen() ? ", chosen by the checks" : ", as the document says")
                + (response.constant() ? ", with a constant" : ", without a constant") + "."));
        if (!response.terms().isEmpty()) {
            blocks.add(new Table(
                    List.of(
                            new Column("term", false),
                            new Column("coefficient", true),
                            new Column("standard error", true)),
                    response.terms().stream().map(FitStatistics::row).toList()));
        }
        blocks.add(new Points(points(response)));
        return blocks;
    }

    private static List<String> row(TermResult term) {
        return List.of(
                term.of().isEmpty() ? "constant" : String.join(" x ", term.of()),
                Figures.significant(term.coefficient(), 5),
                term.standardError() == null ? "not known" : Figures.decimal(term.standardError(), 4));
    }

    private static List<String> points(FittedResult response) {
        var points = new ArrayList<String>();
        var residual = response.residual();
        if (residual != null && residual.sd() != null) {
            points.add("scatter of one batch: standard deviation "
                    + FitReport.with(Figures.decimal(residual.sd(), 4), response.unit()) + " ("
                    + counted(residual.df()) + ")");
        }
        points.add("pure error from repeats: " + counted(response.pureError().df())
                + (response.pureError().df() == 0
                        ? ""
                        : ", sum of squares "
                                + Figures.significant(response.pureError().ss(), 4)));
        var test = response.lackOfFit();
        if (test != null) {
            points.add(
                    "lack of fit: F(" + test.df() + ", " + response.pureError().df() + ") = "
                            + Figures.significant(test.f(), 4) + ", p = " + Figures.decimal(test.p(), 2));
        }
        points.add("R2 " + share(response.r2()) + (response.r2About() == null ? "" : " about the " + response.r2About())
                + ", when each trial is predicted from the others " + share(response.predictedR2()) + "; PRESS "
                + share(response.press())
                + (response.leverage() == null
                        ? ""
                        : "; largest leverage " + share(response.leverage().most())));
        var coverage = response.coverage();
        if (coverage != null) {
            points.add("bounds meant to hold " + FitReport.percent(coverage.sure()) + " % of the time held for "
                    + coverage.held() + " of " + coverage.of() + " trials, each left out in turn");
        }
        return points;
    }

    private static String share(@Nullable BigFraction value) {
        return value == null ? "not known" : Figures.significant(value, 4);
    }

    private static String counted(int degrees) {
        return degrees + (degrees == 1 ? " degree" : " degrees") + " of freedom";
    }
}
