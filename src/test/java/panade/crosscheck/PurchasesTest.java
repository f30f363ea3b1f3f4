package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.buy.Buying;
import panade.buy.LeftoverWorth;
import panade.buy.Period;
import panade.buy.Product;
import panade.domain.Brief;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OrderTerms;
import panade.domain.purchase.Storage;
import panade.domain.purchase.StoreRoom;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Quantity;
import panade.quantity.Unit;
import panade.solver.ortools.OrToolsSolver;
import panade.testing.Planners;

/** Purchase plans against every number of packs there could be, each with its best blend. */
class PurchasesTest {
    private static final Planner PLANNER = Planners.FULL;
    private static final BigFraction WORTH = BigFraction.of(7, 10);
    private static final BigFraction NEAR = BigFraction.of(1, 1_000_000);

    @Provide
    Arbitrary<RawProblem> problems() {
        return RandomKitchen.problems().filter(problem -> problem.ingredients().size() == 4);
    }

    @Property(tries = 12, edgeCases = EdgeCasesMode.NONE)
    void no_number_of_packs_does_better(@ForAll("problems") RawProblem problem, @ForAll long seed) {
        var random = new Random(seed);
        var brief = packed(Answer.blended(problem, new OrToolsSolver()).brief(), random);
        var room = room(brief, random);
        var product = new Product((Blended) PLANNER.answer(brief), brief.batch().base());
        var answers = Buying.answers(
                PLANNER,
                List.of(new Period("", List.of(product))),
                room,
                Storage.FREE,
                new LeftoverWorth(WORTH, Map.of()),
                Duration.ofSeconds(20));
        var adapted = answers.adapted().orElseThrow();
        assertIsLeast(adapted.objective(), leastOfAll(brief, room, WORTH).orElseThrow());
        assertIsLeast(
                answers.leastCash().orElseThrow().objective(),
                leastOfAll(brief, room, BigFraction.ZERO).orElseThrow());
        answers.frozen()
                .ifPresent(frozen -> assertThat(frozen.objective()
                                .subtract(adapted.objective())
                                .add(NEAR)
                                .signum())
                        .isPositive());
        Statistics.label("suppliers").collect(adapted.orders());
    }

    private static void assertIsLeast(BigFraction found, BigFraction least) {
        assertThat(found.subtract(least).signum()).isNotNegative();
        assertThat(found.subtract(least)
                        .subtract(NEAR.multiply(least.abs().add(1)))
                        .signum())
                .isNotPositive();
    }

    private static Brief packed(Brief brief, Random random) {
        var offers = new HashMap<String, Offer>();
        for (var offer : brief.offers()) {
            var kilograms = brief.batch().base().multiply(BigFraction.of(5 + random.nextInt(5), 10));
            var pack = Quantity.of(kilograms, Unit.of("kg"), "a pack");
            offers.putIfAbsent(
                    offer.ingredient(),
                    new Offer(
                            offer.id(),
                            offer.ingredient(),
                            random.nextBoolean() ? "a" : "b",
                            offer.pricePerKg(),
                            pack,
                            null,
                            null,
                            "",
                            offer.origin()));
        }
        return brief.offering(List.copyOf(offers.values()));
    }

    private static StoreRoom room(Brief brief, Random random) {
        var terms = new HashMap<String, OrderTerms>();
        for (var supplier : List.of("a", "b")) {
            var delivery = brief.batch().base().multiply(BigFraction.of(random.nextInt(20), 10));
            var minimum = brief.batch().base().multiply(BigFraction.of(random.nextInt(20), 10));
            terms.put(supplier, new OrderTerms(supplier, minimum, delivery, 1));
        }
        var first = brief.offers().get(0).ingredient();
        var onHand = random.nextBoolean()
                ? Map.of(first, brief.batch().base().multiply(BigFraction.of(1, 5)))
                : Map.<String, BigFraction>of();
        return StoreRoom.holding(terms, onHand);
    }

    private static Optional<BigFraction> leastOfAll(Brief brief, StoreRoom room, BigFraction worth) {
        var best = new ArrayList<BigFraction>();
        search(brief, room, worth, new ArrayList<>(), best);
        return best.stream().reduce((a, b) -> a.subtract(b).signum() <= 0 ? a : b);
    }

    private static void search(
            Brief brief, StoreRoom room, BigFraction worth, List<Integer> packs, List<BigFraction> best) {
        if (packs.size() == brief.offers().size()) {
            value(brief, room, worth, packs).ifPresent(best::add);
            return;
        }
        var offer = brief.offers().get(packs.size());
        // one more than what a batch of nothing else would take, so that a minimum order may be filled up
        var need = brief.batch()
                .base()
                .divide(brief.set().ingredient(offer.ingredient()).usable());
        var filler = offer.pricePerKg().signum() == 0
                ? BigFraction.ZERO
                : room.termsOf(offer.supplier()).minimumOrder().divide(offer.pricePerKg());
        int most = need.add(filler).divide(pack(offer)).intValue() + 1;
        for (int n = 0; n <= most; n++) {
            packs.add(n);
            search(brief, room, worth, packs, best);
            packs.remove(packs.size() - 1);
        }
    }

    private static BigFraction pack(Offer offer) {
        var pack = offer.pack();
        return pack == null ? BigFraction.ONE : pack.base();
    }

    /** Cash less what is left; with packs given, the best blend is the one that uses the least worth. */
    private static Optional<BigFraction> value(Brief brief, StoreRoom room, BigFraction worth, List<Integer> packs) {
        var goods = new HashMap<String, BigFraction>();
        var stocked = new ArrayList<Offer>();
        var value = BigFraction.ZERO;
        var ordered = new HashSet<String>();
        for (int i = 0; i < packs.size(); i++) {
            var offer = brief.offers().get(i);
            var bought = pack(offer).multiply(packs.get(i));
            var there = bought.add(room.onHand(offer.ingredient()));
            if (packs.get(i) > 0) {
                goods.merge(offer.supplier(), bought.multiply(offer.pricePerKg()), BigFraction::add);
                ordered.add(offer.supplier());
            }
            value = value.add(bought.multiply(offer.pricePerKg()))
                    .subtract(there.multiply(offer.pricePerKg()).multiply(worth));
            stocked.add(offer.withPrice(offer.pricePerKg().multiply(worth))
                    .withAvailable(Quantity.of(there, Unit.of("kg"), "there")));
        }
        for (var supplier : ordered) {
            var terms = room.termsOf(supplier);
            if (goods.getOrDefault(supplier, BigFraction.ZERO)
                            .subtract(terms.minimumOrder())
                            .signum()
                    < 0) {
                return Optional.empty();
            }
            value = value.add(terms.delivery());
        }
        var fixed = value;
        return PLANNER.cheapest(brief.offering(stocked))
                .orUndecided()
                .map(blend ->
                        blend.rawCostPerKg().multiply(brief.batch().base()).add(fixed));
    }
}
