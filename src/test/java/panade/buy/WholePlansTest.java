package panade.buy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.purchase.OrderTerms;
import panade.domain.purchase.Storage;
import panade.domain.purchase.StoreRoom;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.testing.Planners;

/**
 * Purchase plans against every plan there is. Kitchens are small: a few ingredients, each with a least and a most
 * weight in the batch, whole kilograms throughout, so that the best plan buys and uses whole kilograms. Invented.
 */
class WholePlansTest {
    private static final Planner PLANNER = Planners.FULL;
    private static final BigFraction WORTH = BigFraction.of(7, 10);
    private static final int KITCHENS = 60;

    @TempDir
    private Path folder;

    /** What is sold: money a kilogram, kilograms; 0 where there is no pack, no minimum, or no end. */
    private record Goods(String ingredient, String supplier, int price, int pack, int minimum, int available) {
        String row() {
            return String.join(
                    ",",
                    ingredient,
                    supplier,
                    String.valueOf(price),
                    "kg",
                    kilograms(pack),
                    kilograms(minimum),
                    kilograms(available));
        }

        private static String kilograms(int number) {
            return number == 0 ? "" : number + " kg";
        }

        /** Kilograms that may be bought, up to some number. */
        List<Integer> amounts(int most) {
            var amounts = new ArrayList<Integer>();
            for (int kg = 0; kg <= most; kg++) {
                boolean whole = pack == 0 || kg % pack == 0;
                boolean enough = kg == 0 || kg >= minimum;
                if (whole && enough && (available == 0 || kg <= available)) {
                    amounts.add(kg);
                }
            }
            return amounts;
        }
    }

    /** Kilograms of each ingredient that a batch takes. */
    private record Kitchen(int batch, Map<String, int[]> limits, List<Goods> goods, Map<String, Integer> delivery) {}

    @Test
    void aWholePackOfOneThingMayBeTheLeastCash() throws IOException {
        // 9 kg of b at 4 beside a pack of a would be 136; the pack of a alone makes the 10 kg for 100
        var kitchen = new Kitchen(
                10,
                limits(1, 10, 0, 10),
                List.of(new Goods("a", "mill", 10, 10, 0, 0), new Goods("b", "farm", 4, 0, 0, 0)),
                Map.of());
        var least = answers(kitchen).leastCash().orElseThrow();
        assertThat(least.cash()).isEqualTo(BigFraction.of(100));
        assertThat(least.gap()).contains(BigFraction.ZERO);
    }

    @Test
    void whatIsSoldByWeightIsBoughtFromItsMinimumUp() throws IOException {
        // 1 kg of b is needed of which no less than 3 kg are sold
        var kitchen = new Kitchen(
                10,
                limits(9, 9, 1, 1),
                List.of(new Goods("a", "mill", 2, 0, 0, 0), new Goods("b", "farm", 4, 0, 3, 0)),
                Map.of());
        assertThat(answers(kitchen).leastCash().orElseThrow().cash()).isEqualTo(BigFraction.of(18 + 12));
    }

    @Test
    void aMinimumBelowAKilogramCounts() throws IOException {
        var brief = brief("200 g", "a,mill,2,kg,,,\nb,farm,4,kg,,500 g,\n", """
                {"ingredient": "b", "min": "100 g"}""");
        var least = answers(brief, Map.of()).leastCash().orElseThrow();
        // half a kilogram of b is bought for 2, so b alone is used
        assertThat(least.cash()).isEqualTo(BigFraction.of(2));
    }

    @Test
    void noPlanThereIsTakesLessCash() throws IOException {
        var random = new Random(48);
        int solved = 0;
        for (int i = 0; i < KITCHENS; i++) {
            var kitchen = kitchen(random);
            var least = least(kitchen, BigFraction.ZERO);
            if (least != null) {
                var answers = answers(kitchen);
                assertThat(answers.leastCash().orElseThrow().cash())
                        .as("%s", kitchen)
                        .isEqualTo(least);
                assertThat(answers.adapted().orElseThrow().objective())
                        .as("%s", kitchen)
                        .isEqualTo(least(kitchen, WORTH));
                solved++;
            }
        }
        assertThat(solved).isGreaterThan(KITCHENS / 2);
    }

    private static Kitchen kitchen(Random random) {
        int batch = 4 + random.nextInt(5);
        var limits = new TreeMap<String, int[]>();
        var goods = new ArrayList<Goods>();
        for (var id : List.of("a", "b", "c")) {
            int min = random.nextInt(3);
            limits.put(id, new int[] {min, Math.max(min, batch - random.nextInt(4))});
            goods.add(goods(id, random.nextBoolean() ? "mill" : "farm", random));
            if (id.equals("a") && random.nextBoolean()) {
                goods.add(goods(id, "shop", random));
            }
        }
        return new Kitchen(batch, limits, goods, Map.of("mill", random.nextInt(2) * 5, "farm", random.nextInt(3) * 3));
    }

    private static Goods goods(String id, String supplier, Random random) {
        return new Goods(
                id,
                supplier,
                1 + random.nextInt(9),
                random.nextInt(2) * (1 + random.nextInt(5)),
                random.nextInt(2) * random.nextInt(6),
                random.nextInt(3) == 0 ? 3 + random.nextInt(6) : 0);
    }

    /** Money of the best plan, less what is left at a part of the lowest price; null when there is none. */
    private static @org.jspecify.annotations.Nullable BigFraction least(Kitchen kitchen, BigFraction worth) {
        var best = new ArrayList<BigFraction>();
        search(kitchen, worth, new ArrayList<>(), best);
        return best.stream()
                .reduce((a, b) -> a.subtract(b).signum() <= 0 ? a : b)
                .orElse(null);
    }

    private static void search(Kitchen kitchen, BigFraction worth, List<Integer> bought, List<BigFraction> best) {
        if (bought.size() < kitchen.goods().size()) {
            for (int kg : kitchen.goods().get(bought.size()).amounts(kitchen.batch() + 6)) {
                bought.add(kg);
                search(kitchen, worth, bought, best);
                bought.remove(bought.size() - 1);
            }
            return;
        }
        var there = new TreeMap<String, Integer>();
        var lowest = new TreeMap<String, Integer>();
        var suppliers = new java.util.TreeSet<String>();
        int money = 0;
        for (int g = 0; g < bought.size(); g++) {
            var goods = kitchen.goods().get(g);
            there.merge(goods.ingredient(), bought.get(g), Integer::sum);
            lowest.merge(goods.ingredient(), goods.price(), Math::min);
            money += bought.get(g) * goods.price();
            if (bought.get(g) > 0 && suppliers.add(goods.supplier())) {
                money += kitchen.delivery().getOrDefault(goods.supplier(), 0);
            }
        }
        int left = worthLeft(kitchen, there, lowest);
        if (left >= 0) {
            best.add(BigFraction.of(money).subtract(worth.multiply(left)));
        }
    }

    /**
     * What is left at its lowest price once the cheapest goods have been used; less than nothing if nothing can be
     * made.
     */
    private static int worthLeft(Kitchen kitchen, Map<String, Integer> there, Map<String, Integer> lowest) {
        var used = new TreeMap<String, Integer>();
        int open = kitchen.batch();
        for (var entry : kitchen.limits().entrySet()) {
            int min = entry.getValue()[0];
            used.put(entry.getKey(), min);
            open -= min;
            if (there.getOrDefault(entry.getKey(), 0) < min) {
                return -1;
            }
        }
        var cheapest = new ArrayList<>(lowest.keySet());
        cheapest.sort((a, b) -> lowest.getOrDefault(a, 0) - lowest.getOrDefault(b, 0));
        int worth = 0;
        for (var id : cheapest) {
            int min = used.getOrDefault(id, 0);
            int more = Math.min(open, Math.min(there.getOrDefault(id, 0), most(kitchen, id)) - min);
            open -= Math.max(0, more);
            worth += (there.getOrDefault(id, 0) - min - Math.max(0, more)) * lowest.getOrDefault(id, 0);
        }
        return open == 0 ? worth : -1;
    }

    private static int most(Kitchen kitchen, String id) {
        var limits = kitchen.limits().get(id);
        return limits == null ? 0 : limits[1];
    }

    private static Map<String, int[]> limits(int leastA, int mostA, int leastB, int mostB) {
        return Map.of("a", new int[] {leastA, mostA}, "b", new int[] {leastB, mostB});
    }

    private PurchaseAnswers answers(Kitchen kitchen) throws IOException {
        var rows = new StringBuilder();
        kitchen.goods().forEach(goods -> rows.append(goods.row()).append('\n'));
        var bounds = new ArrayList<String>();
        kitchen.limits()
                .forEach((id, limits) -> bounds.add("{\"ingredient\": \"%s\", \"min\": \"%s kg\", \"max\": \"%s kg\"}"
                        .formatted(id, limits[0], limits[1])));
        return answers(brief(kitchen.batch() + " kg", rows.toString(), String.join(",", bounds)), kitchen.delivery());
    }

    private static PurchaseAnswers answers(Brief brief, Map<String, Integer> delivery) {
        var terms = new TreeMap<String, OrderTerms>();
        delivery.forEach((supplier, money) ->
                terms.put(supplier, new OrderTerms(supplier, BigFraction.ZERO, BigFraction.of(money), 1)));
        var product = new Product((Blended) PLANNER.answer(brief), brief.batch().base());
        return Buying.answers(
                PLANNER,
                List.of(new Period("", List.of(product))),
                StoreRoom.holding(terms, Map.of()),
                Storage.FREE,
                new LeftoverWorth(WORTH, Map.of()),
                Duration.ofSeconds(20));
    }

    private Brief brief(String batch, String rows, String bounds) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "t", "source": "invented", "ingredients": [
                 {"id": "a", "values": {"FAT": 20}}, {"id": "b", "values": {"FAT": 20}}, {"id": "c", "values": {"FAT": 20}}]}
                """);
        Files.writeString(
                folder.resolve("prices.csv"), "ingredient,supplier,price,per,pack,minimum,available\n" + rows);
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "t", "ingredients": "set.json", "prices": ["prices.csv"], "batch": "%s", "bounds": [%s]}
                """.formatted(batch, bounds));
        var reading = Documents.readBrief(folder.resolve("brief.json"), Overrides.NONE);
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return ((Reading.Accepted<Brief>) reading).value();
    }
}
