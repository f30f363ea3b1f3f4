package panade.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.BuyResults;
import panade.assemble.setting.SetResults;
import panade.bench.PlannedBench;
import panade.buy.Buying;
import panade.buy.LeftoverWorth;
import panade.buy.Period;
import panade.buy.PlanSearch;
import panade.buy.Product;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.LongRunning;
import panade.cli.frame.OutcomePrinter;
import panade.cli.frame.ProblemPrinter;
import panade.cli.frame.UnsupportedFeatures;
import panade.cli.frame.UsageErrors;
import panade.cli.frame.Version;
import panade.cli.frame.WorkbookOption;
import panade.cli.setting.Answers;
import panade.cli.setting.SetOption;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.Schedule;
import panade.domain.purchase.Schedule.Span;
import panade.domain.purchase.Storage;
import panade.domain.purchase.StoreRoom;
import panade.export.BuyCsv;
import panade.plan.Engines;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.remark.BriefRemarks;
import panade.render.TextRenderer;
import panade.report.plate.SheetReport;
import panade.report.question.BuyReport;
import panade.result.setting.SetResult;
import panade.workbook.BuyWorkbook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans what to order. */
@Command(
        name = "buy",
        description = "What do I order, in whole packs, from whom, for these products?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade buy constraints/dumpling-filling.json=240lb constraints/skewer-mince.json=160lb"
        })
public final class BuyCommand implements Callable<Integer>, LongRunning {
    private static final BigFraction USUAL_WORTH = BigFraction.of(7, 10);

    private final PrintWriter out;
    private final PrintWriter err;
    private final Engines engines;
    private final Planner planner;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            paramLabel = "BRIEF=AMOUNT",
            arity = "1..*",
            description = "A brief and how much of it is to be made, such as filling.json=240lb.")
    private final List<String> products = new ArrayList<>();

    @Mixin
    private final WorkbookOption workbook = new WorkbookOption();

    @Option(names = "--prices", paramLabel = "FILE", description = "Use this price list instead; repeatable.")
    private final List<Path> prices = new ArrayList<>();

    @Option(names = "--without", paramLabel = "ID", description = "Leave this ingredient out; repeatable.")
    private final List<String> without = new ArrayList<>();

    @Mixin
    private final SetOption set = new SetOption();

    @Option(names = "--stock", paramLabel = "FILE", description = "What is on hand: ingredient,amount,bestBefore.")
    private @Nullable Path stock;

    @Option(
            names = "--periods",
            paramLabel = "FILE",
            description = "Prices and needs by week or month, and what storing between them costs; a JSON document.")
    private @Nullable Path periods;

    @Option(
            names = "--leftover-worth",
            paramLabel = "[ID=]SHARE",
            description = "What leftovers count for, as a share of their price; 70 %% unless given. Repeatable:"
                    + " one share for all, others for ingredients, such as scallion=0%%.")
    private final List<String> worths = new ArrayList<>();

    @Option(names = "--seconds", paramLabel = "N", description = "Search this long for each answer; 30 unless given.")
    private int seconds = 30;

    @Option(names = "--json", description = "Print the result for machines.")
    private boolean json;

    @Option(names = "--csv", description = "Print the order lists as CSV.")
    private boolean csv;

    @Option(
            names = "--sheets",
            description = "Print a bench sheet for each blend of the plan as well, at the batch its brief states.")
    private boolean sheets;

    public BuyCommand(Console console) {
        this.out = console.out();
        this.err = console.err();
        this.engines = console.engines();
        this.planner = console.planner();
    }

    @Override
    public Integer call() {
        workbook.check();
        if (sheets && csv) {
            throw UsageErrors.in(spec, "--sheets goes with text and --json; --csv prints the order lists alone.");
        }
        if (seconds < 1) {
            throw UsageErrors.in(spec, "--seconds " + seconds + ": expected a number from 1 up.");
        }
        var problems = new ArrayList<Problem>();
        var now = new Span("", prices, List.of());
        var briefs = read(now, problems);
        var moved = moved(problems);
        if (!problems.isEmpty()) {
            return ProblemPrinter.print(problems, err);
        }
        var set = briefs.get(0).set();
        var worth = worth(set);
        var schedule = periods == null
                ? new Schedule(Storage.FREE, List.of(now))
                : accepted(Documents.readSchedule(periods, products.size(), set), problems);
        var spans = schedule == null ? List.<Span>of() : schedule.spans();
        var all = spans.stream().map(span -> read(span, problems)).toList();
        var terms = all.stream()
                .flatMap(List::stream)
                .flatMap(BuyCommand::termFiles)
                .distinct()
                .toList();
        var room =
                accepted(Documents.readStoreRoom(terms, stock, set, LocalDate.now(ZoneId.systemDefault())), problems);
        if (!problems.isEmpty() || schedule == null || room == null) {
            return ProblemPrinter.print(problems, err);
        }
        return plan(schedule, all, room, worth, new Answers(out, err, json, moved));
    }

    private static <T> @Nullable T accepted(Reading<T> reading, List<Problem> problems) {
        if (reading instanceof Reading.Rejected<T> rejected) {
            problems.addAll(rejected.problems());
            return null;
        }
        return ((Reading.Accepted<T>) reading).value();
    }

    /** The products' briefs at the prices and amounts of a stretch of time. */
    private List<Brief> read(Span span, List<Problem> problems) {
        var briefs = new ArrayList<Brief>();
        for (int p = 0; p < products.size(); p++) {
            var product = products.get(p);
            int sign = product.lastIndexOf('=');
            if (sign < 1) {
                throw UsageErrors.in(
                        spec, "\"" + product + "\": expected a brief and an amount, such as filling.json=240lb.");
            }
            var amount = p < span.amounts().size() ? span.amounts().get(p) : weight(product.substring(sign + 1));
            var lists = span.prices().isEmpty() ? prices : span.prices();
            var overrides = new Overrides(lists, amount, without, null);
            var file = Path.of(product.substring(0, sign));
            var brief = accepted(Documents.readBrief(file, trying(file, overrides)), problems);
            if (brief != null) {
                problems.addAll(UnsupportedFeatures.sure(brief));
                briefs.add(brief);
            }
        }
        return briefs;
    }

    /** With the numbers to be tried that one product has a place for; another may have it for the rest. */
    private Overrides trying(Path file, Overrides overrides) {
        return set.settings().isEmpty() ? overrides : Documents.settable(file, overrides.trying(set.settings()));
    }

    /** What the numbers move of each product that has a place for any; what none has a place for is told. */
    private @Nullable SetResult moved(List<Problem> problems) {
        var missing = new LinkedHashSet<>(set.settings());
        var all = new ArrayList<SetResults.Named>();
        for (var product : products) {
            var overrides = trying(file(product), new Overrides(prices, null, without, null));
            var tried = overrides.settings().isEmpty()
                    ? null
                    : accepted(Documents.readTried(file(product), overrides), problems);
            if (tried != null) {
                missing.removeAll(overrides.settings());
                all.add(new SetResults.Named(tried.written().title(), tried));
            }
        }
        if (!missing.isEmpty()) {
            var overrides = new Overrides(prices, null, without, null).trying(List.copyOf(missing));
            accepted(Documents.readTried(file(products.get(0)), overrides), problems);
        }
        return all.isEmpty() || !problems.isEmpty() ? null : SetResults.of(planner, all);
    }

    /** An amount as typed, refused here so that no option is blamed that nobody gave. */
    private String weight(String typed) {
        return Quantity.parse(typed)
                .filter(weight -> weight.unit().dimension() == Dimension.MASS
                        && weight.base().signum() > 0)
                .map(weight -> typed)
                .orElseThrow(() ->
                        UsageErrors.in(spec, "\"" + typed + "\" is no weight above zero; expected such as 240lb."));
    }

    /** A file of order terms beside each price list. */
    private static Stream<Path> termFiles(Brief brief) {
        return Documents.termFiles(brief.offers()).stream();
    }

    private int plan(
            Schedule schedule, List<List<Brief>> briefs, StoreRoom room, LeftoverWorth worth, Answers printed) {
        var made = new ArrayList<Period>();
        for (int t = 0; t < briefs.size(); t++) {
            var inPeriod = new ArrayList<Product>();
            for (var read : briefs.get(t)) {
                var brief = BriefRemarks.on(planner, read);
                if (!(planner.answer(brief) instanceof Blended blended)) {
                    return new OutcomePrinter(printed, err).print(planner.plan(brief));
                }
                inPeriod.add(new Product(blended, brief.batch().base()));
            }
            made.add(new Period(schedule.spans().get(t).name(), inPeriod));
        }
        try (var stop = new EarlyStop(engines.plans())) {
            var answers = Buying.answers(planner, made, room, schedule.storage(), worth, Duration.ofSeconds(seconds));
            var bench = sheets ? new PlanSheets(planner, files()).of(answers) : PlannedBench.NONE;
            var result = BuyResults.of(answers, worth, room, bench);
            if (csv) {
                out.print(BuyCsv.of(result));
                printed.tellAside();
            } else {
                printed.print(result, () -> BuyReport.of(result, stop.isAsked()));
            }
            if (!csv && !json) {
                SheetReport.of(result).forEach(sheet -> out.print("\n" + TextRenderer.render(sheet)));
            }
            out.flush();
            workbook.write(() -> BuyWorkbook.of(result), err);
            return status(answers.adapting());
        }
    }

    private List<Path> files() {
        return products.stream().map(BuyCommand::file).toList();
    }

    private static Path file(String product) {
        return Path.of(product.substring(0, product.lastIndexOf('=')));
    }

    private int status(PlanSearch search) {
        if (search instanceof PlanSearch.Undecided undecided) {
            err.println("No plan was found, and none is ruled out: " + undecided.reason() + ".");
            return ExitStatus.UNDECIDED;
        }
        return search instanceof PlanSearch.Planned ? ExitStatus.DONE : ExitStatus.NO_BLEND;
    }

    private LeftoverWorth worth(IngredientSet set) {
        var usual = USUAL_WORTH;
        var named = new LinkedHashMap<String, BigFraction>();
        for (var worth : worths) {
            int sign = worth.indexOf('=');
            var share = share(worth.substring(sign + 1));
            if (sign < 0) {
                usual = share;
            } else if (set.idOf(worth.substring(0, sign)).isEmpty()) {
                throw UsageErrors.in(
                        spec,
                        "--leftover-worth " + worth + ": no ingredient of the set is called \""
                                + worth.substring(0, sign) + "\".");
            } else {
                named.put(set.idOf(worth.substring(0, sign)).orElseThrow(), share);
            }
        }
        return new LeftoverWorth(usual, named);
    }

    private BigFraction share(String text) {
        return Quantity.parse(text)
                .filter(share -> share.unit().dimension() == Dimension.SHARE)
                .map(Quantity::base)
                .filter(share -> share.signum() >= 0 && share.compareTo(BigFraction.ONE) < 0)
                .orElseThrow(() -> UsageErrors.in(
                        spec, "--leftover-worth " + text + ": expected a share below 100 %, such as 70%."));
    }
}
