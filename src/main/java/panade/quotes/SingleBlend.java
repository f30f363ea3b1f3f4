package panade.quotes;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Decision;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.compile.Extent;
import panade.compile.RuleCompiler;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.purchase.Offer;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;
import panade.plan.Planner;
import panade.quotes.PriceComparison.Single;

/**
 * Finds one blend for several price lists by a linear program: shares are common to all lists, each list has a cost of
 * its own, and the objective is the worst regret (Savage, J. Am. Statistical Association 46, 1951) or the mean cost.
 */
final class SingleBlend {
    private final Planner planner;
    private final List<Brief> briefs;
    private final List<Pricing> pricings;
    private final Brief common;
    private final CompiledBrief compiled;
    private final Set<Integer> switches;
    private final List<Column> columns = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    /** Cost of each list by column. */
    private final List<LinearForm> costs = new ArrayList<>();

    SingleBlend(Planner planner, List<Brief> briefs) {
        this.planner = planner;
        this.briefs = briefs;
        this.pricings = briefs.stream().map(Pricing::new).toList();
        this.common = common(briefs);
        this.compiled = BriefCompiler.compile(common);
        var choice = RuleCompiler.compile(common, compiled, Extent.ANY).model();
        columns.addAll(choice.relaxed().columns());
        rows.addAll(choice.relaxed().rows());
        switches = choice.whole();
        for (int list = 0; list < briefs.size(); list++) {
            costs.add(costOf(list));
        }
    }

    /** What can be bought under every list, at no price and from nobody in particular. */
    private static Brief common(List<Brief> briefs) {
        var first = briefs.get(0);
        var ids = new LinkedHashSet<>(first.candidates());
        briefs.forEach(brief -> ids.retainAll(brief.candidates()));
        var offers = first.offers().stream()
                .filter(offer -> ids.contains(offer.ingredient()))
                .map(Offer::unlisted)
                .toList();
        var one = new ArrayList<Offer>();
        offers.stream()
                .filter(offer -> one.stream().noneMatch(had -> had.ingredient().equals(offer.ingredient())))
                .forEach(one::add);
        return first.offeringOnly(one);
    }

    private LinearForm costOf(int list) {
        return common.candidates().stream().map(id -> costOf(list, id)).reduce(LinearForm.ZERO, LinearForm::plus);
    }

    /**
     * Where the cheapest offer is without end its price is the cost; otherwise what is bought of each offer is a
     * column.
     */
    private LinearForm costOf(int list, String id) {
        var pricing = pricings.get(list);
        var offers = pricing.cheapestFirst(id);
        var need = need(id);
        if (pricing.mostOf(offers.get(0)).isEmpty()) {
            return need.scaled(offers.get(0).pricePerKg());
        }
        var balance = need;
        var cost = LinearForm.ZERO;
        for (var offer : offers) {
            int column = columns.size();
            columns.add(new Column(list + " " + id + "<" + offer.supplier(), BigFraction.ZERO));
            balance = balance.plus(column, BigFraction.ONE.negate());
            cost = cost.plus(column, offer.pricePerKg());
            pricing.mostOf(offer)
                    .ifPresent(most -> rows.add(
                            new Row(list + " available", LinearForm.of(column, BigFraction.ONE), Sense.AT_MOST, most)));
        }
        rows.add(new Row(list + " bought", balance, Sense.EQUAL, BigFraction.ZERO));
        return cost;
    }

    /** Kilograms bought per kilogram of batch, by column. */
    private LinearForm need(String id) {
        return compiled.shareOf(id).scaled(common.asBought(id, BigFraction.ONE));
    }

    /** The blend whose worst excess over the least costs is least; impossible when none can be made under all lists. */
    Decision<Single> leastRegret(List<BigFraction> leastCosts) {
        int regret = columns.size();
        var priced = new ArrayList<>(columns);
        priced.add(new Column("regret", BigFraction.ONE));
        var all = new ArrayList<>(rows);
        for (int list = 0; list < briefs.size(); list++) {
            var excess = costs.get(list).plus(regret, BigFraction.ONE.negate());
            all.add(new Row("regret under " + list, excess, Sense.AT_MOST, leastCosts.get(list)));
        }
        return single(new LinearModel(priced, all));
    }

    /** The blend that is cheapest on average; impossible when none can be made under all lists. */
    Decision<Single> cheapestOnAverage() {
        var mean = costs.stream().reduce(LinearForm.ZERO, LinearForm::plus).scaled(BigFraction.of(1, briefs.size()));
        return single(new LinearModel(columns, rows).minimising(mean));
    }

    private Decision<Single> single(LinearModel model) {
        return planner.cheapestPoint(new MixedModel(model, switches))
                .fold(point -> single(model, point), Decision.Impossible::new, Decision.Undecided::new);
    }

    private Decision<Single> single(LinearModel model, List<BigFraction> point) {
        var blend = Planner.blendAt(
                common, compiled, point.subList(0, compiled.columns().size()));
        return Planner.measured(common, blend)
                .map(checked -> new Single(model.costAt(point), checked, costsOf(checked)));
    }

    private List<BigFraction> costsOf(Blend blend) {
        return pricings.stream()
                .map(pricing -> pricing.cost(blend))
                .map(Optional::orElseThrow)
                .toList();
    }
}
