package panade.plan;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Consumer;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.certify.Certifier;
import panade.certify.Decision;
import panade.certify.Verdict;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.compile.Extent;
import panade.compile.RuleCompiler;
import panade.cone.Cut;
import panade.cone.CuttingPlanes;
import panade.cone.Tightened;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.explain.Explanation;
import panade.explain.Room;
import panade.explain.RoomReader;
import panade.explain.conflict.ConflictExplainer;
import panade.explain.conflict.Trials;
import panade.explain.conflict.Trials.Search;
import panade.explain.conflict.Trials.Trial;
import panade.model.LinearModel;
import panade.model.MixedModel;
import panade.model.Unproved;
import panade.solver.Deadline;
import panade.solver.MixedAnswer;
import panade.solver.Solver;
import panade.solver.SolverAnswer;

/** Runs the line once: compile, solve, certify, measure again, explain. */
public final class Planner {
    private static final Duration LIMIT = Duration.ofSeconds(60);

    /** How long is spent on why there is no blend and on what would change that. */
    private static final Duration EXPLAINING = Duration.ofSeconds(30);

    /**
     * How often a rate for the cooked weight is taken anew at most. The steps close in faster than by halves
     * (Dinkelbach 1967), so that this is far more than any model needs.
     */
    private static final int MOST_RATES = 100;

    /** How much dearer a blend may be to count as nearby, unless somebody says otherwise: one per cent. */
    public static final BigFraction USUAL_SLACK = BigFraction.of(1, 100);

    private final Engines engines;
    private final BigFraction slack;
    private final int conflicts;
    private final Consumer<Explanation.Part> watcher;

    /** A planner that asks one solver, for linear models only. */
    public Planner(Solver solver) {
        this(Engines.linear(solver));
    }

    /** A planner with the usual slack that tells one conflict. */
    public Planner(Engines engines) {
        this(engines, USUAL_SLACK, 1);
    }

    /**
     * A planner that asks some solvers.
     *
     * @param slack how much dearer a blend may be to count as nearby, as a fraction of the least cost
     * @param conflicts how many irreducible conflicts to look for at most when there is no blend
     */
    public Planner(Engines engines, BigFraction slack, int conflicts) {
        this(engines, slack, conflicts, part -> {});
    }

    /** The same; the watcher is told of each part of an explanation that is worked out. */
    Planner(Engines engines, BigFraction slack, int conflicts, Consumer<Explanation.Part> watcher) {
        this.engines = engines;
        this.slack = slack;
        this.conflicts = conflicts;
        this.watcher = watcher;
    }

    /** The outcome of a brief, with the room around the blend or all that was asked for about conflicts. */
    public Outcome plan(Brief brief) {
        return outcome(brief, true, conflicts);
    }

    /**
     * The outcome of a brief as quickly as it can be had: no room, the first conflict found, and of the explanation
     * only what is asked for afterwards.
     */
    public Outcome answer(Brief brief) {
        return outcome(brief, false, ConflictExplainer.FIRST);
    }

    /** The brief with bounds that keep the label it asks for, found out if need be; the same where it asks for none. */
    public Brief keepingLabel(Brief brief) {
        return new LabelKeeper(this::answer).settled(brief);
    }

    private Outcome outcome(Brief asked, boolean roomy, int most) {
        try {
            return decided(asked, roomy, most);
        } catch (Unproved open) {
            return new Outcome.Undecided(asked, open.reason());
        }
    }

    private Outcome decided(Brief asked, boolean roomy, int most) {
        var brief = keepingLabel(asked);
        var plain = tightened(brief, BigFraction.ZERO);
        var compiled = plain.compiled();
        if (!(plain.verdict() instanceof Verdict.Optimum)) {
            return without(brief, compiled, plain.verdict(), most);
        }
        return settled(brief, plain, Deadline.in(Chooser.TIME))
                .fold(settled -> blended(settled, roomy), proof -> conflicted(brief, compiled, most, proof));
    }

    /**
     * The proof of a brief's least cost, or that its rules leave nothing. Where cost is counted per cooked weight, that
     * cost is taken off each cooked kilogram, and taken anew from the blend found, until nothing is gained.
     *
     * @param plain the proved optimum of the brief without its rules, at raw cost
     */
    private OrProof<Settled> settled(Brief brief, Tightened plain, Deadline deadline) {
        var rate = BigFraction.ZERO;
        var settled = brief.practice().rules().isEmpty()
                ? new OrProof.Found<>(settled(brief, brief, null, plain))
                : settled(brief, rate, deadline);
        boolean weighed = false;
        for (int step = 0;
                settled instanceof OrProof.Found<Settled> found
                        && brief.practice().perCooked();
                step++) {
            var blend = found.value().blend();
            if (blend.weight().signum() == 0) {
                rate = CookedRate.heavier(brief, rate, weighed);
            } else if (blend.costPerKg().equals(rate)) {
                return settled;
            } else {
                rate = blend.costPerKg();
                weighed = true;
            }
            if (step == MOST_RATES) {
                throw new Unproved("the cost per cooked weight still fell after " + MOST_RATES + " steps");
            }
            settled = settled(brief, rate, deadline);
        }
        return settled;
    }

    private OrProof<Settled> settled(Brief brief, BigFraction rate, Deadline deadline) {
        if (brief.practice().rules().isEmpty()) {
            return new OrProof.Found<>(settled(brief, brief, null, rate));
        }
        return chooser(rate, deadline)
                .choose(brief)
                .map(chosen -> settled(brief, chosen.brief(), chosen.choice(), rate));
    }

    private Settled settled(Brief asked, Brief brief, @Nullable Choice choice, BigFraction rate) {
        return settled(asked, brief, choice, tightened(brief, rate));
    }

    private static Settled settled(Brief asked, Brief brief, @Nullable Choice choice, Tightened tightened) {
        if (!(tightened.verdict() instanceof Verdict.Optimum optimum)) {
            throw new Unproved(reason(tightened.verdict()));
        }
        var blend = BlendReader.blend(brief, tightened.compiled(), optimum.point());
        return new Settled(
                asked, brief, choice, tightened.compiled(), optimum, blend, tightened.least(), tightened.cuts());
    }

    /** What is proved of a brief without its rules; how sure bounds keep away from their numbers is told by cuts. */
    private Tightened tightened(Brief brief, BigFraction rate) {
        if (brief.isSure()
                && (brief.practice().perCooked() || !brief.practice().rules().isEmpty())) {
            throw new Unproved("bounds that are to be sure are not solved with rules or a cost per cooked weight");
        }
        return CuttingPlanes.solve(BriefCompiler.compile(brief, rate), this::verdict, List.of());
    }

    /** A brief without rules of its own, and the proof of its least cost. */
    private record Settled(
            Brief asked,
            Brief brief,
            @Nullable Choice choice,
            CompiledBrief compiled,
            Verdict.Optimum optimum,
            Blend blend,
            @Nullable BigFraction least,
            List<Cut> cuts) {}

    private Chooser chooser(BigFraction rate, Deadline deadline) {
        return new Chooser(this::verdict, engines.mixed(), rate, deadline);
    }

    /** Trials of changed briefs, all of them before a deadline. */
    public Trials trials(Deadline deadline) {
        return new PlannedTrials(this, engines.mixed(), deadline, List.of());
    }

    /** What comes of a brief, its cheapest blend measured again. */
    Trial trial(Brief asked, Deadline deadline) {
        return least(asked, deadline.within(Chooser.TIME)).fold(Planner::trial, Trial.Fails::new, Trial.Open::new);
    }

    private static Trial trial(Settled settled) {
        var choice = settled.choice();
        return fault(settled.asked(), settled.blend())
                .<Trial>map(Trial.Open::new)
                .orElseGet(() -> new Trial.Works(settled.blend().costPerKg(), choice == null || choice.closed()));
    }

    /** The cheapest blend alone, measured again. */
    public Decision<Blend> cheapest(Brief asked) {
        return proved(asked).map(ProvedBlend::blend);
    }

    /** The cheapest blend with its proof, measured again, without the reasons that take most of the time. */
    public Decision<ProvedBlend> proved(Brief asked) {
        return least(asked, Deadline.in(Chooser.TIME))
                .fold(Planner::checked, Decision.Impossible::new, Decision.Undecided::new);
    }

    private Decision<Settled> least(Brief asked, Deadline deadline) {
        try {
            var brief = keepingLabel(asked);
            var plain = tightened(brief, BigFraction.ZERO);
            if (plain.verdict() instanceof Verdict.Impossible) {
                return new Decision.Impossible<>();
            }
            return plain.verdict() instanceof Verdict.Optimum
                    ? settled(brief, plain, deadline)
                            .<Decision<Settled>>fold(Decision.Found::new, proof -> new Decision.Impossible<>())
                    : new Decision.Undecided<>(reason(plain.verdict()));
        } catch (Unproved open) {
            return new Decision.Undecided<>(open.reason());
        }
    }

    private static Decision<ProvedBlend> checked(Settled settled) {
        return measured(settled.asked(), settled.blend())
                .map(blend -> new ProvedBlend(settled.brief(), settled.compiled(), blend, settled.optimum()));
    }

    /** A blend, once it is measured against its brief without the model; undecided where it fails. */
    public static Decision<Blend> measured(Brief asked, Blend blend) {
        return fault(asked, blend)
                .<Decision<Blend>>map(Decision.Undecided::new)
                .orElseGet(() -> new Decision.Found<>(blend));
    }

    /** What is wrong with a blend that should be what a brief asks for, measured without the model. */
    private static Optional<String> fault(Brief asked, Blend blend) {
        var faults = new Audit(asked, blend).faults();
        return faults.isEmpty()
                ? Optional.empty()
                : Optional.of("measured again, the blend " + String.join(", and ", faults));
    }

    /** Why a model that is neither solved nor proved impossible is not decided. */
    public static String reason(Verdict verdict) {
        return verdict instanceof Verdict.Unproven unproven ? unproven.reason() : "the cost falls without end";
    }

    /**
     * The cost of a blend as cheap as the search for whole numbers could find, without the proof that no choice is
     * cheaper; empty when it found none. Costs per cooked weight are found by steps that need the proof.
     */
    public Optional<BigFraction> cheapestFound(Brief brief) {
        var compiled = BriefCompiler.compile(brief);
        if (brief.isSure() || brief.practice().perCooked() || verdict(compiled) instanceof Verdict.Impossible) {
            return cheapest(brief).found().map(Blend::costPerKg);
        }
        var model = RuleCompiler.compile(brief, compiled, Extent.ANY).model();
        try {
            return chooser(BigFraction.ZERO, Deadline.in(Chooser.TIME)).found(model) instanceof Search.Found found
                    ? Optional.of(model.relaxed().costAt(found.point()))
                    : Optional.empty();
        } catch (Unproved open) {
            return Optional.empty();
        }
    }

    /** The cheapest point of a model with switches. */
    public Decision<List<BigFraction>> cheapestPoint(MixedModel model) {
        try {
            return chooser(BigFraction.ZERO, Deadline.in(Chooser.TIME)).cheapestPoint(model);
        } catch (Unproved open) {
            return new Decision.Undecided<>(open.reason());
        }
    }

    /** How much of anything there can be under a brief's bounds, found by exact linear programs. */
    public Extent extent(CompiledBrief compiled) {
        return new ProvedExtent(compiled, this::verdict);
    }

    /** What the search for whole numbers says of a model, unproved. */
    public MixedAnswer search(MixedModel model, Duration limit) {
        return engines.mixed().solve(model, limit);
    }

    /** The same of a model with many whole numbers; it can be asked in several threads, and interrupted. */
    public MixedAnswer searchLong(MixedModel model, Duration limit) {
        return engines.plans().solve(model, limit);
    }

    /** The blend that a point of a brief's model stands for. */
    public static Blend blendAt(Brief brief, CompiledBrief compiled, List<BigFraction> point) {
        return BlendReader.blend(brief, compiled, point);
    }

    /** What can be proved of any model; may be asked in several threads. */
    public Verdict verdict(LinearModel model) {
        return Certifier.certify(model, this::answer, engines.linear().name());
    }

    /** Native solvers are asked by one thread at a time; what is proved of their answers is not held up. */
    private synchronized SolverAnswer answer(LinearModel model) {
        return engines.linear().solve(model, LIMIT);
    }

    private Verdict verdict(CompiledBrief compiled) {
        return verdict(compiled.model());
    }

    private Outcome without(Brief brief, CompiledBrief compiled, Verdict verdict, int conflicts) {
        if (verdict instanceof Verdict.Impossible impossible) {
            return conflicted(brief, compiled, conflicts, new Contradiction.Sum(impossible));
        }
        return new Outcome.Undecided(brief, reason(verdict));
    }

    private Outcome.Conflicted conflicted(Brief brief, CompiledBrief compiled, int most, Contradiction proof) {
        var trials = trials(Deadline.in(EXPLAINING));
        return new Outcome.Conflicted(brief, ConflictExplainer.explain(brief, compiled, most, trials), proof);
    }

    private Outcome blended(Settled settled, boolean roomy) {
        var brief = settled.brief();
        var optimum = settled.optimum();
        var blend = settled.blend();
        var fault = fault(settled.asked(), blend);
        if (fault.isPresent()) {
            return new Outcome.Undecided(brief, fault.get());
        }
        // the two longest pieces of work, each from the proved optimum alone, at the same time
        var measuring = CompletableFuture.supplyAsync(() -> roomy && !brief.isSure() ? room(settled) : Room.UNMEASURED);
        var explanation = new Explanation(brief, settled.compiled(), blend, optimum, watcher);
        if (roomy) {
            explanation.complete();
        }
        var room = joined(measuring);
        var nearby = room.points().stream()
                .map(point -> BlendReader.blend(brief, settled.compiled(), point))
                .toList();
        return new Outcome.Blended(
                settled.asked(),
                brief,
                settled.choice(),
                blend,
                explanation,
                room,
                Alternatives.choose(blend, nearby).stream()
                        .filter(other -> fault(settled.asked(), other).isEmpty())
                        .toList(),
                optimum,
                settled.least(),
                new NumberSteps(
                        brief,
                        blend.costPerKg(),
                        new NearbyCost(
                                this::verdict, this::cheapest, settled.compiled(), optimum::basis, settled.cuts())));
    }

    private static Room joined(CompletableFuture<Room> measuring) {
        try {
            return measuring.join();
        } catch (CompletionException failed) {
            throw failed.getCause() instanceof Unproved open ? open : failed;
        }
    }

    private Room room(Settled settled) {
        return RoomReader.room(settled.brief(), settled.compiled(), settled.blend(), settled.optimum(), slack);
    }
}
