package panade.cli;

import java.io.PrintWriter;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.cost.FullCost;
import panade.cost.LabelPrice;
import panade.cost.Ladder;
import panade.cost.OptionalSections;
import panade.cost.OptionalSections.BreakEven;
import panade.domain.Brief;
import panade.plan.Engines;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.CurrencySigns;
import panade.quantity.Decimal;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.workbook.BlendWorkbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Finds the cheapest blend. */
@Command(
        name = "blend",
        description = "The cheapest blend that meets every bound, what holds it back and what each bound costs.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade blend constraints/dumpling-filling.json --batch 5kg"})
final class BlendCommand implements Callable<Integer> {
    private final PrintWriter out;
    private final PrintWriter err;
    private final Engines engines;

    @Mixin
    private final BriefArgument argument = new BriefArgument();

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final BriefOptions options = new BriefOptions();

    @Mixin
    private final WorkbookOption workbook = new WorkbookOption();

    @Option(
            names = "--slack",
            paramLabel = "SHARE",
            description = "How much dearer a blend may be to count as nearby; 1 %% unless given.")
    private String slack = "1 %";

    @Option(
            names = "--conflicts",
            paramLabel = "N",
            description =
                    "When there is no blend, look for up to this many sets of bounds in conflict; 1 unless given.")
    private int conflicts = 1;

    @Option(
            names = "--fixed",
            paramLabel = "MONEY",
            description = "Costs a month whatever is made: tells how much must be sold to pay them.")
    private @Nullable String fixed;

    @Option(
            names = "--sells-at",
            paramLabel = "PRICE",
            description =
                    "What you are paid; from the brief's shelf, all margins but the last taken off, unless given.")
    private @Nullable String sellsAt;

    @Option(names = "--ladder", description = "Tell what each name less on the label costs.")
    private boolean ladder;

    BlendCommand(PrintWriter out, PrintWriter err, Engines engines) {
        this.out = out;
        this.err = err;
        this.engines = engines;
    }

    @Override
    public Integer call() {
        workbook.check();
        var printer = new OutcomePrinter(out, err, argument.json());
        var planner = new Planner(engines, slackShare(), conflictCount());
        return argument.with(options.overrides(), planner, err, brief -> print(printer, planner, planner.plan(brief)));
    }

    private int print(OutcomePrinter printer, Planner planner, Outcome outcome) {
        if (!(outcome instanceof Blended blended)) {
            return printer.print(outcome);
        }
        int status = printer.print(
                blended,
                new OptionalSections(
                        ladder ? Ladder.of(planner, blended) : null,
                        breakEven(blended.brief()),
                        LabelPrice.of(planner, blended).orElse(null)));
        workbook.write(() -> BlendWorkbook.of(blended), err);
        return status;
    }

    private @Nullable BreakEven breakEven(Brief brief) {
        var costs = fixed;
        if (costs == null) {
            return null;
        }
        var shelf = brief.practice().shelf();
        if (sellsAt == null && shelf == null) {
            throw UsageErrors.in(
                    spec, "--fixed needs what you are paid: say --sells-at 3.70/lb, or put \"shelf\" into the brief.");
        }
        var paid = sellsAt == null
                ? FullCost.paidPerKg(Objects.requireNonNull(shelf))
                : UsageErrors.price(spec, "--sells-at", sellsAt, brief.currency());
        var money = CurrencySigns.without(costs, brief.currency())
                .flatMap(Decimal::parse)
                .filter(number -> number.signum() >= 0)
                .orElseThrow(() -> UsageErrors.number(spec, "--fixed", costs, "money a month, such as 3500"));
        return new BreakEven(money, paid);
    }

    private int conflictCount() {
        if (conflicts < 1) {
            throw UsageErrors.in(spec, "--conflicts " + conflicts + ": expected a number from 1 up.");
        }
        return conflicts;
    }

    private BigFraction slackShare() {
        return Quantity.parse(slack)
                .filter(share -> share.unit().dimension() == Dimension.SHARE
                        && share.base().signum() >= 0)
                .map(Quantity::base)
                .orElseThrow(() -> UsageErrors.in(spec, "--slack " + slack + ": expected a share, such as \"1 %\"."));
    }
}
