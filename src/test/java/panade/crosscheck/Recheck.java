package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Blend.Line;

/** Measures a blend again, straight from the raw numbers and without rounding. */
record Recheck(RawProblem problem, Blend blend) {

    void holds() {
        assertThat(blend.lines()).allMatch(line -> line.share().signum() >= 0, "has no negative share");
        assertThat(share(line -> true)).as("all shares").isEqualTo(BigFraction.ONE);
        assertThat(blend.costPerKg()).as("cost of the lines").isEqualTo(cost());
        var shares = problem.uses().stream().map(this::shareOf).toList();
        assertThat(problem.bounds()).allMatch(bound -> bound.isMetBy(shares), "is met");
        assertThat(problem.ingredients()).allMatch(this::isWithinCeiling, "is within its maxUse");
        assertThat(problem.offers()).allMatch(this::canBeHad, "can be had");
    }

    private BigFraction shareOf(RawUse use) {
        return share(line -> line.use().ingredient().equals(use.ingredient())
                && line.use().stage().equals(use.stage()));
    }

    private boolean isWithinCeiling(RawIngredient ingredient) {
        var used = share(line -> line.use().ingredient().equals(ingredient.id()));
        return used.multiply(100).compareTo(Exact.of(ingredient.maxUse())) <= 0;
    }

    private boolean canBeHad(RawOffer offer) {
        var bought = bought(offer).multiply(Exact.of(problem.batch()));
        return offer.available()
                .map(most -> bought.compareTo(Exact.of(most)) <= 0)
                .orElse(true);
    }

    private BigFraction cost() {
        return problem.offers().stream()
                .map(offer -> bought(offer).multiply(offer.pricePerKg()))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** Kilograms as bought for each kilogram of batch. */
    private BigFraction bought(RawOffer offer) {
        var used = share(line -> line.use().ingredient().equals(offer.ingredient())
                && line.offer().supplier().equals(offer.supplier()));
        return used.divide(problem.ingredient(offer.ingredient()).kept());
    }

    private BigFraction share(Predicate<Line> of) {
        return blend.lines().stream().filter(of).map(Line::share).reduce(BigFraction.ZERO, BigFraction::add);
    }
}
