package panade.explain;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.explain.Explanation.Unused;
import panade.testing.SmallKitchen;

/** Which unused ingredients a cook is told of first, in kitchens drawn at random (invented). */
class NearestTest {
    private static final String BOUNDS = "{\"property\": \"FAT\", \"min\": \"12 %\"},"
            + "{\"property\": \"PROCNT\", \"min\": \"14 %\", \"max\": \"20 %\"}, {\"property\": \"WATER\", \"min\": \"40 %\"}";

    @Test
    void the_nearest_are_those_whose_price_must_lose_the_least_of_itself() {
        for (int seed = 1; seed <= 10; seed++) {
            var explanation = kitchen(seed, 45).blended().explanation();
            var all = explanation.unused().stream()
                    .map(NearestTest::lost)
                    .sorted()
                    .toList();
            var nearest = explanation.nearest();
            // those that no price brings in are as far as each other
            assertThat(nearest.first().stream().map(NearestTest::lost).toList()).isEqualTo(all.subList(0, 20));
            assertThat(nearest.others()).isEqualTo(all.size() - 20);
        }
    }

    @Test
    void a_few_are_told_all_by_id() {
        var explanation = kitchen(3, 12).blended().explanation();
        assertThat(explanation.nearest().first()).isEqualTo(explanation.unused());
        assertThat(explanation.nearest().others()).isZero();
    }

    /** The part of its price that an ingredient must lose; two where no price is low enough. */
    private static BigFraction lost(Unused unused) {
        var entry = unused.entry();
        return entry == null
                ? BigFraction.of(2)
                : unused.pricePerKg().subtract(entry.at()).divide(unused.pricePerKg());
    }

    private static SmallKitchen kitchen(int seed, int size) {
        var random = new Random(seed);
        var ingredients = IntStream.range(0, size)
                .mapToObj(i -> "{\"id\": \"i" + i + "\", \"values\": {\"FAT\": " + random.nextInt(30) + ", \"PROCNT\": "
                        + random.nextInt(30) + ", \"WATER\": " + random.nextInt(40) + "}, \"others\": 0}")
                .collect(Collectors.joining(",\n"));
        var water = ",{\"id\": \"water\", \"values\": {\"FAT\": 0, \"PROCNT\": 0, \"WATER\": 100}, \"others\": 0}";
        var prices = IntStream.range(0, size)
                .mapToObj(i -> "i" + i + ",shop," + (1 + random.nextInt(90)) + ",kg,\n")
                .collect(Collectors.joining());
        return new SmallKitchen(ingredients + water, prices + "water,tap,0.01,kg,\n", BOUNDS, "");
    }
}
