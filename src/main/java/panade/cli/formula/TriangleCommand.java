package panade.cli.formula;

import java.nio.file.Path;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.trial.TriangleResults;
import panade.assemble.trial.TriangleResults.Sample;
import panade.cli.frame.Console;
import panade.cli.frame.ShareConverter;
import panade.cli.frame.Version;
import panade.design.TriangleServing;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.trial.Formula;
import panade.nudge.Start;
import panade.plan.Outcome;
import panade.quantity.Quantity;
import panade.report.trial.TriangleReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Sets up a triangle test of two formulas, and says what its answers mean. */
@Command(
        name = "triangle",
        description =
                "Does it taste different? A serving sheet with blind codes for a triangle test of what I make against"
                        + " the cheapest blend of its brief, or another formula, and what the answers mean.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade triangle constraints/dumpling-filling-made.json --tasters 12"})
public final class TriangleCommand extends FormulaCommand {
    @Option(
            names = "--against",
            paramLabel = "FORMULA",
            description = "Taste against this formula, not the cheapest blend.")
    private @Nullable Path against;

    @Option(
            names = "--tasters",
            required = true,
            paramLabel = "NUMBER",
            description = "How many people taste, from 1 to 300.")
    private int tasters;

    @Option(names = "--right", paramLabel = "NUMBER", description = "How many were right, after they have tasted.")
    private @Nullable Integer right;

    @Option(
            names = "--risk",
            converter = ShareConverter.OfRisk.class,
            paramLabel = "SHARE",
            description = "How often alike samples may be called different; 5 %% unless given.")
    private @Nullable Quantity risk;

    @Option(names = "--seed", paramLabel = "NUMBER", description = "Draw other codes and orders; 1 unless given.")
    private long seed = 1;

    public TriangleCommand(Console console) {
        super(console);
    }

    @Override
    void check() {
        if (tasters < 1 || tasters > TriangleServing.MOST_TASTERS) {
            throw usage("--tasters " + tasters + ": expected from 1 to " + TriangleServing.MOST_TASTERS + ".");
        }
        if (right != null && (right < 0 || right > tasters)) {
            throw usage("--right " + right + ": expected from 0 to " + tasters + ", the number of tasters.");
        }
    }

    @Override
    int answer(Formula read, Start start, List<Problem> problems) {
        if (!problems.isEmpty()) {
            return refuse(problems);
        }
        return against == null ? againstCheapest(read, start) : againstFormula(read, start, against);
    }

    private int againstFormula(Formula read, Start start, Path file) {
        var reading = read(file);
        if (reading instanceof Reading.Rejected<Formula> rejected) {
            return refuse(rejected.problems());
        }
        var other = ((Reading.Accepted<Formula>) reading).value();
        var blend = new Start(other.brief(), other.shares(), other.suppliers()).blend();
        return compare(read, start, new Sample(other.title(), other.brief(), blend));
    }

    private int againstCheapest(Formula read, Start start) {
        var outcome = planner().answer(start.brief());
        return outcome instanceof Outcome.Blended best
                ? compare(
                        read,
                        start,
                        new Sample(
                                "the cheapest blend of \"" + start.brief().title() + "\", weighed as panade batch says",
                                start.brief(),
                                best.blend()))
                : printer().print(outcome);
    }

    private int compare(Formula read, Start start, Sample other) {
        var result = TriangleResults.of(
                new Sample(read.title(), start.brief(), start.blend()),
                other,
                start.movedTo(other.blend()).signum() == 0,
                tasters,
                seed,
                risk == null ? BigFraction.of(1, 20) : risk.base(),
                right);
        return print(result, () -> TriangleReport.of(result));
    }
}
