package panade.cli.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.trial.NextResults;
import panade.bench.Scales;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.LongRunning;
import panade.cli.frame.OutcomePrinter;
import panade.cli.frame.ProblemPrinter;
import panade.cli.frame.ShareConverter;
import panade.cli.frame.UnsupportedFeatures;
import panade.cli.frame.UsageErrors;
import panade.cli.frame.Version;
import panade.cli.frame.WeightConverter;
import panade.document.Documents;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.trial.TrialSet;
import panade.experiment.Levers;
import panade.experiment.Need;
import panade.experiment.NextTrials;
import panade.experiment.Request;
import panade.export.ResultJson;
import panade.plan.Outcome;
import panade.quantity.Quantity;
import panade.quantity.Unit;
import panade.render.TextRenderer;
import panade.report.trial.NextReport;
import panade.trial.FittedResponse;
import panade.trial.Fitting;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what to mix next. */
@Command(
        name = "next",
        description =
                "What should I mix next, and what is knowing it worth? Bench sheets in random order with blind codes.",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {
            "",
            "Example: panade next ingredient-sets/netherpleat/trials-dumpling-filling.json --need \"break min 420 g\""
        })
public final class NextCommand implements Callable<Integer>, LongRunning {
    private static final int MOST_TRIALS = 20;
    private static final int MOST_LEVERS = 8;

    /** A tenth of a cent a pound, per kilogram. */
    private static final BigFraction WORTHWHILE = BigFraction.of(1, 1000).divide(Unit.POUND.factor());

    private final Console console;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "TRIALS", description = "The trials so far, a JSON document.")
    private @Nullable Path trials;

    @Option(names = "--trials", paramLabel = "NUMBER", description = "How many mixings, from 1 to 20; 6 unless given.")
    private int count = 6;

    @Option(
            names = "--need",
            converter = NeedConverter.class,
            paramLabel = "NEED",
            description =
                    "What must come out, such as \"break min 420 g\"; repeatable. Without any, gains are not told.")
    private List<NeedConverter.Wish> wishes = new ArrayList<>();

    @Option(
            names = "--sure",
            converter = ShareConverter.OfSure.class,
            paramLabel = "SHARE",
            description = "How sure a blend is to be of that in the next batch; 90 %% unless given.")
    private @Nullable Quantity sure;

    @Option(
            names = "--per-month",
            converter = WeightConverter.OfBatch.class,
            paramLabel = "AMOUNT",
            description = "What is made a month, such as 800lb, to tell gains a month.")
    private @Nullable Quantity monthly;

    @Option(
            names = "--batch",
            converter = WeightConverter.OfBatch.class,
            paramLabel = "AMOUNT",
            description = "What one mixing weighs; 1lb unless given.")
    private @Nullable Quantity batch;

    @Option(
            names = "--weighing",
            converter = WeightConverter.OfScale.class,
            paramLabel = "STEP",
            description = "What the bench scale can show; 0.1g unless given.")
    private @Nullable Quantity weighing;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            description = "Draw other codes and another order; 1 unless given.")
    private long seed = 1;

    @Option(names = "--json", description = "Print the result for machines.")
    private boolean json;

    public NextCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (count < 1 || count > MOST_TRIALS) {
            throw UsageErrors.in(spec, "--trials " + count + ": expected from 1 to " + MOST_TRIALS + ".");
        }
        var reading = Documents.readTrials(Objects.requireNonNull(trials));
        return reading instanceof Reading.Accepted<TrialSet> accepted
                ? answer(accepted.value())
                : refuse(((Reading.Rejected<TrialSet>) reading).problems());
    }

    private int answer(TrialSet set) {
        var problems = new ArrayList<>(UnsupportedFeatures.of(set.brief()));
        problems.addAll(beyond(Levers.of(set)));
        if (!problems.isEmpty()) {
            return refuse(problems);
        }
        var share = given(sure, "90 %").base();
        var responses = Fitting.of(set, share);
        var request = new Request(
                count,
                given(batch, "1 lb"),
                new Scales(given(weighing, "0.1 g"), null, BigFraction.ZERO),
                responses,
                wishes.stream().map(wish -> need(wish, responses)).toList(),
                WORTHWHILE,
                seed);
        var outcome = console.planner().answer(set.brief());
        if (!(outcome instanceof Outcome.Blended)) {
            return new OutcomePrinter(console.out(), console.err(), json).print(outcome);
        }
        var result = NextResults.of(set, request, share, NextTrials.of(console.planner(), set, request), monthly);
        console.out().print(json ? ResultJson.text(result) : TextRenderer.render(NextReport.of(result)));
        return ExitStatus.DONE;
    }

    private static Quantity given(@Nullable Quantity option, String usual) {
        return option == null ? Quantity.parse(usual).orElseThrow() : option;
    }

    private static List<Problem> beyond(Levers levers) {
        var problems = new ArrayList<Problem>();
        levers.ratio()
                .ifPresent(lever -> problems.add(new Problem(
                        lever.origin(),
                        "the lever \"" + lever.name()
                                + "\" is so much of one thing per another, which this command cannot" + " follow",
                        List.of("Expected a lever without \"per\"; \"fit\" knows both."))));
        if (levers.all().size() > MOST_LEVERS) {
            problems.add(new Problem(
                    levers.all().get(MOST_LEVERS).origin(),
                    "there are " + levers.all().size() + " levers",
                    List.of("Expected " + MOST_LEVERS + " at most: mix with fewer at a time.")));
        }
        return problems;
    }

    private Need need(NeedConverter.Wish wish, List<FittedResponse> responses) {
        var names = responses.stream().map(each -> each.response().name()).toList();
        var found = responses.stream()
                .filter(each -> each.response().name().equals(wish.response()))
                .findFirst()
                .orElseThrow(() -> UsageErrors.in(
                        spec,
                        "--need " + wish.response() + ": nothing of that name is measured; expected one of "
                                + String.join(", ", names) + "."));
        var unit = found.response().unit();
        if (!wish.unit().isEmpty() && !wish.unit().equals(unit)) {
            throw UsageErrors.in(
                    spec,
                    "--need " + wish.response() + ": is measured " + (unit.isEmpty() ? "without a unit" : "in " + unit)
                            + ", not in " + wish.unit() + ".");
        }
        return new Need(found, wish.side(), wish.number());
    }

    private int refuse(List<Problem> problems) {
        return ProblemPrinter.print(problems, console.err());
    }
}
