package panade.buy;

import java.math.BigInteger;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.buy.PurchaseModels.Draft;
import panade.certify.Verdict;
import panade.certify.Verdict.Optimum;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.solver.MixedAnswer;
import panade.solver.MixedAnswer.Found;

/** Searches for whole packs, and proves what is best beside them. */
record PackSearch(Planner planner, PurchaseModels drafts, Duration limit) {
    /** How far, as a part of the money, a finished search's own bound may lie below its plan in binary arithmetic. */
    private static final BigFraction BINARY = BigFraction.of(1, 1_000_000);

    MixedAnswer found(Draft draft) {
        return planner.searchLong(draft.ledger().model(), limit);
    }

    /**
     * The best plan that is known for a model.
     *
     * @param answer of the search in that model
     * @param others of searches in models with the same columns, whose packs count here as well
     * @param kept plans in which blends are kept
     * @param draft the model that is made least
     * @param then the same with costs that are made least next, where several plans cost the same
     */
    PlanSearch settled(
            MixedAnswer answer,
            List<MixedAnswer> others,
            List<List<PurchasePlan>> kept,
            Draft draft,
            Optional<Draft> then) {
        boolean finished = answer instanceof Found found && found.finished();
        var known = new ArrayList<Plan>();
        packs(answer).flatMap(packs -> beside(packs, draft, then)).ifPresent(known::add);
        if (known.isEmpty() || !finished) {
            others.forEach(other ->
                    packs(other).flatMap(packs -> beside(packs, draft, then)).ifPresent(known::add));
            kept.forEach(plans -> known.add(new Plan(plans, draft.objective(plans))));
        }
        return known.stream()
                .min(Comparator.comparing(Plan::objective))
                .map(plan -> planned(plan, answer, draft))
                .orElseGet(() -> without(answer, draft));
    }

    /** A plan and what it comes to. */
    private record Plan(List<PurchasePlan> periods, BigFraction objective) {}

    private static Optional<Map<Integer, BigInteger>> packs(MixedAnswer answer) {
        return answer instanceof Found found ? Optional.of(found.values()) : Optional.empty();
    }

    /** The best that can be done beside packs, proved; empty when nothing can. */
    private Optional<Plan> beside(Map<Integer, BigInteger> packs, Draft draft, Optional<Draft> then) {
        var model = draft.ledger().model().holding(packs);
        if (!(planner.verdict(model) instanceof Optimum optimum)) {
            return Optional.empty();
        }
        var least = model.costAt(optimum.point());
        var point = then.flatMap(next -> next(model, least, next)).orElse(optimum.point());
        return Optional.of(new Plan(new PlanReader(drafts, draft, point).plans(), least));
    }

    /** The best point by another model's costs among those that cost the same by a model's own. */
    private Optional<List<BigFraction>> next(LinearModel model, BigFraction least, Draft then) {
        var capped = model.with(new Row("no dearer", model.costs(), Sense.AT_MOST, least));
        var columns = then.ledger().model().relaxed().columns();
        return planner.verdict(new LinearModel(columns, capped.rows())) instanceof Optimum optimum
                ? Optional.of(optimum.point())
                : Optional.empty();
    }

    private PlanSearch planned(Plan plan, MixedAnswer answer, Draft draft) {
        var claimed = answer instanceof Found found ? Decimal.of(found.bound()) : null;
        var hair = plan.objective().abs().add(1).multiply(BINARY);
        if (claimed == null || claimed.subtract(plan.objective()).compareTo(hair) > 0) {
            // no bound, or one that the plan itself contradicts: without whole packs no plan can be cheaper
            claimed = planner.verdict(draft.ledger().model().relaxed()) instanceof Optimum optimum
                    ? draft.ledger().model().relaxed().costAt(optimum.point())
                    : null;
        }
        boolean finished = answer instanceof Found found
                && found.finished()
                && claimed != null
                && plan.objective().subtract(claimed).compareTo(hair) <= 0;
        return new PlanSearch.Planned(new MultiPeriodPlan(plan.periods(), plan.objective(), claimed, finished));
    }

    private PlanSearch without(MixedAnswer answer, Draft draft) {
        if (planner.verdict(draft.ledger().model().relaxed()) instanceof Verdict.Impossible) {
            return new PlanSearch.Impossible(true);
        }
        if (answer instanceof MixedAnswer.Infeasible) {
            return new PlanSearch.Impossible(false);
        }
        return answer instanceof MixedAnswer.Undecided undecided
                ? new PlanSearch.Undecided(undecided.reason(), undecided.asked())
                : new PlanSearch.Undecided(
                        "the packs that were found do not hold when they are checked in exact fractions", true);
    }
}
