package panade.cli.command;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import panade.assemble.BlendResults;
import panade.cli.frame.BriefCommand;
import panade.cli.frame.Console;
import panade.cli.frame.ShareConverter;
import panade.cli.frame.UsageErrors;
import panade.cli.frame.Version;
import panade.cli.frame.WorkbookOption;
import panade.cost.FullCost;
import panade.cost.LabelPrice;
import panade.cost.Ladder;
import panade.cost.OptionalSections;
import panade.cost.OptionalSections.BreakEven;
import panade.domain.Brief;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.CurrencySigns;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.workbook.BlendWorkbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Finds the cheapest blend. */
@Command(
        name = "blend",
        description = "The cheapest blend that meets every bound, what holds it back and what each bound costs.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade blend constraints/dumpling-filling.json --batch 5kg"})
public final class BlendCommand extends BriefCommand {
    @Mixin
    private final WorkbookOption workbook = new WorkbookOption();

    @Option(
            names = "--slack",
            converter = ShareConverter.OfCost.class,
            paramLabel = "SHARE",
            description = "How much dearer a blend may be to count as nearby; 1 %% unless given.")
    private Quantity slack = new ShareConverter.OfCost().convert("1 %");

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

    @Option(
            names = "--all",
            description =
                    "Tell all: each bound, how far each ingredient may move, what is not used, what the blend holds.")
    private boolean all;

    public BlendCommand(Console console) {
        super(console);
    }

    @Override
    protected boolean knowsSure() {
        return true;
    }

    @Override
    protected void check() {
        workbook.check();
        if (conflicts < 1) {
            throw usage("--conflicts " + conflicts + ": expected a number from 1 up.");
        }
    }

    @Override
    protected int answer(Brief brief) {
        var outcome = new Planner(engines(), slack.base(), conflicts).plan(brief);
        if (!(outcome instanceof Blended blended)) {
            return print(outcome);
        }
        int status = printer()
                .print(
                        blended,
                        new OptionalSections(
                                ladder ? Ladder.of(planner(), blended) : null,
                                breakEven(blended.brief()),
                                LabelPrice.of(planner(), blended).orElse(null)),
                        all);
        workbook.write(() -> BlendWorkbook.of(BlendResults.of(blended, OptionalSections.NONE), blended.asked()), err());
        return status;
    }

    private @Nullable BreakEven breakEven(Brief brief) {
        var costs = fixed;
        if (costs == null) {
            return null;
        }
        var shelf = brief.practice().shelf();
        if (sellsAt == null && shelf == null) {
            throw usage("--fixed needs what you are paid: say --sells-at 3.70/lb, or put \"shelf\" into the brief.");
        }
        var paid = sellsAt == null
                ? FullCost.paidPerKg(Objects.requireNonNull(shelf))
                : UsageErrors.price(spec(), "--sells-at", sellsAt, brief.currency());
        var money = CurrencySigns.without(costs, brief.currency())
                .flatMap(Decimal::parse)
                .filter(number -> number.signum() >= 0)
                .orElseThrow(() -> UsageErrors.number(spec(), "--fixed", costs, "money a month, such as 3500"));
        return new BreakEven(money, paid);
    }
}
