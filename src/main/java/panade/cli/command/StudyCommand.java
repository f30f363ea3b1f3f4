package panade.cli.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.StudyResults;
import panade.assemble.formula.MadeStudyResults;
import panade.assemble.trial.HeldResults;
import panade.cli.frame.Console;
import panade.cli.frame.ExitStatus;
import panade.cli.frame.FormulaOrBriefCommand;
import panade.cli.frame.LongRunning;
import panade.cli.frame.UnsupportedFeatures;
import panade.cli.frame.Version;
import panade.document.Documents;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.purchase.OfferId;
import panade.nudge.Start;
import panade.plan.Outcome.Blended;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.report.formula.MadeStudyReport;
import panade.report.plate.StudyReport;
import panade.report.trial.HeldReport;
import panade.vary.FormulaStudy;
import panade.vary.HeldStudy;
import panade.vary.Varying;
import panade.vary.VaryingCompositions;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Draws prices at random, and what ingredients hold where they say how much that varies. */
@Command(
        name = "study",
        description = "How do cost and blend behave when prices vary, and what ingredients hold?",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Example: panade study constraints/dumpling-filling.json --draws 10000 --spread 10%%"})
public final class StudyCommand extends FormulaOrBriefCommand implements LongRunning {
    private static final long MOST_DRAWS = 100_000_000;
    private static final int MOST_COMPOSITIONS = 100_000;
    private static final long MOST_PROVED = 100_000;
    private static final long MOST_SUMMED = 1_000_000;

    /** Each keeps tallies of its own, a quarter of a megabyte. */
    private static final int MOST_THREADS = 256;

    /** Solving and proving this many takes seconds. */
    private static final int MOST_UNASKED = 1000;

    @Option(names = "--draws", paramLabel = "N", description = "How often all prices are drawn; 10000 unless given.")
    private long draws = 10_000;

    @Option(
            names = "--spread",
            paramLabel = "SHARE|FILE",
            description = "How far each price may be off, up or down, such as 10%%; or a CSV file with "
                    + "ingredient,supplier,spread, in which what is not named stays as it is. 10 %% unless given.")
    private String spread = "10 %";

    @Option(
            names = "--compositions",
            paramLabel = "N",
            description = "How often what ingredients hold is drawn as well, for values that state a spread in the "
                    + "ingredient set; each draw is solved and proved on its own. As often as prices, but at most "
                    + MOST_UNASKED + " times, unless given; 0 leaves it out.")
    private @Nullable Integer compositions;

    @Option(names = "--seed", paramLabel = "N", description = "Draws other prices; 1 unless given.")
    private long seed = 1;

    @Option(names = "--prove", description = "Solve every draw again in exact fractions, not only a hundred of them.")
    private boolean prove;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "Use so many processors; all unless given. The result is the same.")
    private int threads = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());

    public StudyCommand(Console console) {
        super(console);
    }

    @Override
    protected void check() {
        if (draws < 1 || draws > MOST_DRAWS) {
            throw usage("--draws " + draws + ": expected a number from 1 to " + MOST_DRAWS + ".");
        }
        if (compositions() < 0 || compositions() > MOST_COMPOSITIONS) {
            throw usage("--compositions " + compositions() + ": expected a number from 0 to " + MOST_COMPOSITIONS
                    + "; 0 leaves them out.");
        }
        if (threads < 1 || threads > MOST_THREADS) {
            throw usage("--threads " + threads + ": expected a number from 1 to " + MOST_THREADS
                    + "; this machine has " + Runtime.getRuntime().availableProcessors()
                    + " processors, and more threads than that gain nothing.");
        }
        if (prove && draws > MOST_PROVED) {
            throw usage("--prove with --draws " + draws + ": expected " + MOST_PROVED
                    + " draws at most, since each is solved" + " again in exact fractions.");
        }
    }

    @Override
    protected boolean knowsCooked() {
        return false;
    }

    @Override
    protected boolean knowsSure() {
        return true;
    }

    private int compositions() {
        return compositions == null ? (int) Math.min(draws, MOST_UNASKED) : compositions;
    }

    @Override
    protected int answer(String title, Start made) {
        if (made.brief().isSure()) {
            return refuse(UnsupportedFeatures.sure(made.brief()));
        }
        if (prove || draws > MOST_SUMMED) {
            throw usage("Of a formula every draw is an exact sum: expected no --prove, and --draws " + MOST_SUMMED
                    + " at most.");
        }
        var spreads = spreads(made.brief());
        if (spreads instanceof Reading.Rejected<Map<OfferId, BigFraction>> rejected) {
            return refuse(rejected.problems());
        }
        var known = ((Reading.Accepted<Map<OfferId, BigFraction>>) spreads).value();
        var study = FormulaStudy.of(made.brief(), made.blend(), known, draws, compositions(), seed);
        var result = MadeStudyResults.of(title, made, study, seed);
        print(result, () -> MadeStudyReport.of(result));
        return ExitStatus.DONE;
    }

    @Override
    protected int answer(Brief brief) {
        var spreads = spreads(brief);
        if (spreads instanceof Reading.Rejected<Map<OfferId, BigFraction>> rejected) {
            return refuse(rejected.problems());
        }
        var known = ((Reading.Accepted<Map<OfferId, BigFraction>>) spreads).value();
        var best = planner().answer(brief);
        if (!(best instanceof Blended blended)) {
            return explain(brief);
        }
        if (brief.isSure()) {
            return held(blended);
        }
        var study = Varying.of(planner(), blended, known, draws, seed, threads, prove);
        var composed = compositions() == 0
                ? null
                : VaryingCompositions.of(planner(), blended, known, compositions(), seed, threads)
                        .orElse(null);
        var result = StudyResults.of(study, composed);
        print(result, () -> StudyReport.of(result));
        return result.certificate().off() == 0 ? ExitStatus.DONE : ExitStatus.OUR_FAULT;
    }

    /** With sure bounds the blend changes with every price, so only what it holds is drawn. */
    private int held(Blended blended) {
        if (compositions() == 0) {
            throw usage("--compositions 0: expected some, since beside bounds that are to be sure only what ingredients"
                    + " hold is drawn.");
        }
        var study = HeldStudy.of(blended, compositions(), seed, threads);
        if (study.isEmpty()) {
            throw usage("No ingredient states a \"spread\", so there is nothing to draw beside bounds that are to be"
                    + " sure.");
        }
        var result = HeldResults.of(blended, study.get(), seed);
        print(result, () -> HeldReport.of(result));
        return ExitStatus.DONE;
    }

    private Reading<Map<OfferId, BigFraction>> spreads(Brief brief) {
        var stated = Quantity.parse(spread);
        if (stated.isEmpty()) {
            return Documents.readSpreads(spreadFile(), brief);
        }
        var share = stated.filter(quantity -> quantity.unit().dimension() == Dimension.SHARE)
                .map(Quantity::base)
                .filter(base -> base.signum() >= 0 && base.compareTo(BigFraction.ONE) < 0)
                .orElseThrow(() -> usage("--spread " + spread
                        + ": expected a share from 0% to below 100%, such as 10%, or a file of spreads."));
        var spreads = new HashMap<OfferId, BigFraction>();
        brief.offers().forEach(offer -> spreads.put(offer.id(), share));
        brief.otherOffers().forEach(offer -> spreads.put(offer.id(), share));
        return new Reading.Accepted<>(spreads);
    }

    private Path spreadFile() {
        try {
            return Path.of(spread);
        } catch (InvalidPathException e) {
            throw usage("--spread " + spread + ": expected a share such as 10%, or a file of spreads.");
        }
    }
}
