package panade.experiment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Decision;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Use;
import panade.domain.trial.Weighed;
import panade.plan.Planner;
import panade.plan.ProvedBlend;
import panade.quantity.Decimal;

/**
 * The cheapest blend that is as sure as asked of what it needs, between a blend that is a hair too little sure and none
 * that costs less.
 *
 * @param point its levers
 * @param prices what a unit of each need costs, per kilogram, in the order of the needs
 */
record SureBlend(ProvedBlend proved, List<BigFraction> point, List<BigFraction> prices) {
    /** Tangents close in fast; this is far more than any two or three levers took. */
    private static final int ROUNDS = 40;

    /** As near to a need as counts as kept, as a part of the margin. */
    private static final BigFraction NEAR = BigFraction.of(1, 1_000_000);

    SureBlend {
        point = List.copyOf(point);
        prices = List.copyOf(prices);
    }

    /** A tangent that was added, and the place of its need. */
    private record Cut(int need, Bound bound) {}

    /** Where a blend lies, to twelve digits; settings as in the middle. */
    static List<BigFraction> point(Brief brief, ProvedBlend blend, Levers levers, List<BigFraction> middle) {
        var shares = new LinkedHashMap<Use, BigFraction>();
        blend.blend().lines().forEach(line -> shares.merge(line.use(), line.share(), BigFraction::add));
        return Levers.rounded(levers.at(new Weighed(shares), middle, brief.composition()));
    }

    /**
     * The cheapest blend.
     *
     * @param needs all of which are known
     * @param middle where settings stand
     */
    static Decision<SureBlend> of(
            Planner planner, Brief brief, Levers levers, List<Need> needs, List<BigFraction> middle) {
        var cuts = new ArrayList<Cut>();
        for (int round = 0; round < ROUNDS; round++) {
            var bounds = new ArrayList<>(brief.bounds());
            cuts.forEach(cut -> bounds.add(cut.bound()));
            var decision = planner.proved(brief.withBounds(bounds));
            if (decision.found().isEmpty()) {
                return decision.map(blend -> new SureBlend(blend, List.of(), List.of()));
            }
            var proved = decision.orElseThrow();
            var point = point(brief, proved, levers, middle);
            int before = cuts.size();
            for (int i = 0; i < needs.size(); i++) {
                var need = needs.get(i);
                var near = Decimal.of(need.margin(levers, point)).multiply(NEAR);
                if (need.missed(levers, point).compareTo(near) > 0) {
                    cuts.add(new Cut(i, need.tangent(levers, point, cuts.size())));
                }
            }
            if (cuts.size() == before) {
                return new Decision.Found<>(new SureBlend(proved, point, prices(proved, needs.size(), cuts)));
            }
        }
        return new Decision.Undecided<>("the margins did not settle after " + ROUNDS + " rounds");
    }

    private static List<BigFraction> prices(ProvedBlend proved, int needs, List<Cut> cuts) {
        var prices = new ArrayList<BigFraction>();
        for (int i = 0; i < needs; i++) {
            var price = BigFraction.ZERO;
            for (var cut : cuts) {
                if (cut.need() == i) {
                    for (int row : proved.compiled().rowsOf(cut.bound().id())) {
                        price = price.add(proved.proof().multipliers().get(row).abs());
                    }
                }
            }
            prices.add(price);
        }
        return prices;
    }
}
