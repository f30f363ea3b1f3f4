package panade.resolve;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.testing.RepeatableSeeds;

/**
 * Random kitchens whose every printed figure is solved again from the documents, by code that shares nothing with it.
 */
class ResolvedClaimsTest {
    private static final long KITCHENS = Long.getLong("panade.kitchens", 300);
    private static final long FIRST = RepeatableSeeds.seed("ResolvedClaimsTest");

    @Test
    void every_figure_is_what_typing_it_in_gives() {
        var tally = LongStream.range(FIRST, FIRST + KITCHENS)
                .parallel()
                .mapToObj(ResolvedClaimsTest::kitchen)
                .collect(Tally::new, Tally::add, Tally::add);
        System.out.println(tally);
        System.out.println(KITCHENS + " kitchens, " + tally.checked() + " figures solved again");
        assertThat(tally.wrong()).isEmpty();
    }

    private static Tally kitchen(long seed) {
        var tally = new Tally();
        try {
            claims(seed, tally);
        } catch (RuntimeException e) {
            tally.claim("kitchens read through", false, e + " at " + e.getStackTrace()[0]);
        }
        return tally;
    }

    private static void claims(long seed, Tally tally) {
        var random = new Random(~seed);
        var kitchen = KitchenDraw.of(seed, random.nextInt(3) == 0);
        tally.at("blend of kitchen " + seed);
        var blend = Answered.to(kitchen, "blend", Answered.BRIEF);
        boolean isBlend = new BlendClaims(kitchen, tally).check(blend);
        if (isBlend && !hasRules(kitchen) && random.nextInt(3) == 0) {
            var text = Answered.text(kitchen, "blend", Answered.BRIEF, "--all");
            var least = new PlainAnswer(kitchen).least().orElseThrow();
            new StepClaims(kitchen, least, tally).check(text, blend.json().get("bounds"));
        }
        if (kitchen.lists().size() > 1) {
            tally.at("quotes of kitchen " + seed);
            new QuotesClaims(kitchen, tally).check(Answered.to(kitchen, "quotes", Answered.BRIEF));
        }
        if (isBlend) {
            followed(seed, random, kitchen, blend, tally);
        }
    }

    private static boolean hasRules(TypedKitchen kitchen) {
        return kitchen.brief().has("rules") || kitchen.brief().has("maxIngredients");
    }

    private static void followed(long seed, Random random, TypedKitchen kitchen, Answered blend, Tally tally) {
        var used = blend.json().get("blend");
        var id = used.get(random.nextInt(used.size())).get("ingredient").asString();
        tally.at("swap of " + id + " in kitchen " + seed);
        new SwapClaims(kitchen, id, tally).check(Answered.to(kitchen, "swap", Answered.BRIEF, "--out", id));
        if (new PlainReading(kitchen).isPerCooked()) {
            return;
        }
        reach(seed, random, kitchen, tally);
        if (!hasRules(kitchen)) {
            traces(seed, random, kitchen, id, tally);
        }
    }

    private static void reach(long seed, Random random, TypedKitchen kitchen, Tally tally) {
        var least = new PlainAnswer(kitchen).least().orElseThrow();
        var part = BigFraction.of(70 + random.nextInt(40), 100);
        var target = KitchenDraw.decimal(least.multiply(part), 3, RoundingMode.HALF_EVEN)
                .max(new BigDecimal("0.01"));
        tally.at("reach of " + target + "/kg in kitchen " + seed);
        var answered = Answered.to(kitchen, "reach", Answered.BRIEF, "--target", target.toPlainString() + "/kg");
        new ReachClaims(kitchen, target, least, tally).check(answered);
    }

    private static void traces(long seed, Random random, TypedKitchen kitchen, String id, Tally tally) {
        tally.at("trace of the price of " + id + " in kitchen " + seed);
        new TraceClaims(kitchen, tally).price(Answered.to(kitchen, "trace", Answered.BRIEF, "--price", id));
        int at = random.nextInt(kitchen.brief().get("bounds").size());
        var bound = kitchen.brief().get("bounds").get(at);
        var side = bound.has("min") ? bound.has("max") ? List.of("min", "max").get(random.nextInt(2)) : "min" : "max";
        var path = "/bounds/" + at;
        boolean isFixed =
                bound.has("min") && bound.has("max") && bound.get("min").equals(bound.get("max"));
        tally.at("trace of " + path + "/" + side + " in kitchen " + seed);
        var words = isFixed || !bound.has("min") || !bound.has("max")
                ? new String[] {"trace", Answered.BRIEF, "--bound", path}
                : new String[] {"trace", Answered.BRIEF, "--bound", path, "--side", side};
        new TraceClaims(kitchen, tally).bound(Answered.to(kitchen, words), isFixed ? path : path + "/" + side);
    }
}
