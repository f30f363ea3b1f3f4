package panade.cli.command;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.TraceResults;
import panade.assemble.trial.SureCurveResults;
import panade.cli.frame.BriefCommand;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.LongRunning;
import panade.cli.frame.UsageErrors;
import panade.cli.frame.Version;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Side;
import panade.domain.purchase.Offer;
import panade.export.TraceCsv;
import panade.plan.Outcome.Blended;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.report.question.TraceReport;
import panade.report.trial.SureCurveReport;
import panade.trace.BoundTracing;
import panade.trace.Curve;
import panade.trace.PriceTracing;
import panade.trace.SureCurve;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Follows the least cost as one number moves. */
@Command(
        name = "trace",
        description =
                "At exactly which price (or bound) does the blend change, and to what? What does being surer cost?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {
            "",
            "Examples: panade trace constraints/dumpling-filling.json --price shea-fat --to 5/lb",
            "          panade trace constraints/dumpling-filling.json --bound protein",
            "          panade trace constraints/dumpling-filling-sure.json --sure protein"
        })
public final class TraceCommand extends BriefCommand implements LongRunning {
    @ArgGroup(multiplicity = "1")
    private final Subject subject = new Subject();

    @Option(names = "--from", paramLabel = "NUMBER", description = "Lowest price (1.20/lb) or number (12 %%).")
    private @Nullable String from;

    @Option(names = "--to", paramLabel = "NUMBER", description = "Highest price or number.")
    private @Nullable String to;

    @Option(names = "--side", paramLabel = "min|max", description = "Which number of a bound that has two.")
    private @Nullable String side;

    @Option(names = "--csv", description = "Print the points as CSV.")
    private boolean csv;

    /** What moves. */
    static final class Subject {
        @Option(names = "--price", paramLabel = "ID", description = "The ingredient whose price moves.")
        private @Nullable String price;

        @Option(names = "--bound", paramLabel = "NAME", description = "The bound whose number moves.")
        private @Nullable String bound;

        @Option(
                names = "--sure",
                paramLabel = "NAME",
                description =
                        "The bound of which you would be more or less sure: the cost at 50, 80, 90, 95 and 99 %%.")
        private @Nullable String sure;
    }

    @Option(
            names = "--supplier",
            paramLabel = "NAME",
            description = "Whose price moves, where several sell it; else the cheapest offer's. All others stay.")
    private @Nullable String supplier;

    public TraceCommand(Console console) {
        super(console);
    }

    @Override
    protected boolean knowsCooked() {
        return false;
    }

    @Override
    protected boolean knowsSure() {
        return subject.sure != null;
    }

    @Override
    protected int answer(Brief asked) {
        if (subject.sure != null) {
            return traceSureness(planner().keepingLabel(asked), subject.sure);
        }
        var brief = settled(planner().keepingLabel(asked));
        var price = subject.price;
        return price != null ? tracePrice(brief, price) : traceBound(brief, Objects.requireNonNull(subject.bound));
    }

    /** With rules, the choice that is best today is kept along the curve. */
    private Brief settled(Brief brief) {
        boolean ruled = !brief.practice().rules().isEmpty();
        return ruled && planner().answer(brief) instanceof Blended blended ? blended.brief() : brief;
    }

    private int tracePrice(Brief brief, String name) {
        var found = InBrief.ingredient(brief, name);
        if (found.isEmpty()) {
            return refuse(List.of(InBrief.noIngredient(brief, name)));
        }
        var least = from == null ? BigFraction.ZERO : UsageErrors.price(spec(), "--from", from, brief.currency());
        var most = to == null ? null : UsageErrors.price(spec(), "--to", to, brief.currency());
        checkOrder(least, most);
        return print(brief, PriceTracing.of(planner(), brief, moved(brief, found.get()), least, most));
    }

    private Offer moved(Brief brief, String id) {
        if (supplier == null) {
            return PriceTracing.cheapest(brief, id);
        }
        var sellers =
                brief.offersFor(id).stream().map(Offer::supplier).distinct().toList();
        return brief.offersFor(id).stream()
                .filter(offer -> offer.supplier().equals(supplier))
                .min(Comparator.comparing(Offer::pricePerKg))
                .orElseThrow(() -> usage("--supplier \"" + supplier + "\" does not sell " + id + ": expected "
                        + String.join(" or ", sellers) + "."));
    }

    private int traceSureness(Brief brief, String name) {
        if (csv || from != null || to != null) {
            throw usage("--sure goes over 50, 80, 90, 95 and 99 %: expected neither --csv nor --from nor --to.");
        }
        var found = InBrief.bound(brief, name);
        if (found.isEmpty()) {
            return refuse(List.of(InBrief.noBound(brief, name)));
        }
        var bound = found.get();
        boolean plain = bound.per() == null || bound.kind() == LimitKind.STAGE;
        if ((bound.sure() == null && (!plain || bound.isFixed(brief.batch())))
                || !SureCurve.isUncertain(brief, bound)) {
            throw usage("--sure \"" + name + "\": expected a bound that is learned, or one on a property of which some"
                    + " ingredient states a \"spread\", with room between its numbers.");
        }
        var result = SureCurveResults.of(SureCurve.of(planner(), brief, bound));
        print(result, () -> SureCurveReport.of(result));
        return ExitStatus.DONE;
    }

    private int traceBound(Brief brief, String name) {
        var found = InBrief.bound(brief, name);
        if (found.isEmpty()) {
            return refuse(List.of(InBrief.noBound(brief, name)));
        }
        return traceBound(brief, found.get());
    }

    private int traceBound(Brief brief, Bound bound) {
        var moved = chosen(brief, bound);
        var limit = Objects.requireNonNull(moved == Side.MIN ? bound.min() : bound.max());
        var least = from == null ? null : number("--from", from, bound, limit);
        var most = to == null ? null : number("--to", to, bound, limit);
        checkOrder(least, most);
        return print(brief, BoundTracing.of(planner(), brief, bound, moved, least, most));
    }

    private void checkOrder(@Nullable BigFraction least, @Nullable BigFraction most) {
        if (least != null && most != null && most.compareTo(least) <= 0) {
            throw usage("--from is not below --to: expected the lowest first, then the highest.");
        }
    }

    private Side chosen(Brief brief, Bound bound) {
        if (bound.min() == null || bound.max() == null) {
            return bound.min() == null ? Side.MAX : Side.MIN;
        }
        if (bound.isFixed(brief.batch())) {
            return Side.FIXED;
        }
        if (side == null) {
            throw usage("The bound \"" + bound.name() + "\" has two numbers: say --side min or --side max.");
        }
        return switch (side) {
            case "min" -> Side.MIN;
            case "max" -> Side.MAX;
            default -> throw usage("--side " + side + ": expected min or max.");
        };
    }

    private BigFraction number(String option, String text, Bound bound, Quantity limit) {
        return Quantity.parse(text)
                .filter(quantity -> quantity.unit().measuresLike(limit.unit()))
                .filter(quantity -> isPossible(quantity, bound))
                .map(quantity -> limit.unit().fromBase(quantity.base()))
                .orElseThrow(() -> UsageErrors.number(
                        spec(), option, text, "a number that the bound could have, written like " + limit.text()));
    }

    /** A weight is never below nothing, nor is a share outside 0 % to 100 % but in a ratio. */
    private static boolean isPossible(Quantity quantity, Bound bound) {
        var dimension = quantity.unit().dimension();
        boolean isPart = dimension == Dimension.SHARE && bound.per() == null;
        return (dimension != Dimension.MASS && !isPart)
                || (quantity.base().signum() >= 0 && (!isPart || quantity.base().compareTo(BigFraction.ONE) <= 0));
    }

    private int print(Brief brief, Optional<Curve> curve) {
        if (curve.isEmpty()) {
            return explain(brief);
        }
        var result = TraceResults.of(curve.get());
        if (csv) {
            out().print(TraceCsv.of(result));
            answers().tellAside();
        } else {
            print(result, () -> TraceReport.of(result));
        }
        return ExitStatus.DONE;
    }
}
