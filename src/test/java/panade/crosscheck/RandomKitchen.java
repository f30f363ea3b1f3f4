package panade.crosscheck;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.apache.commons.numbers.fraction.BigFraction;

/** Draws small problems that have a blend: the blend is drawn first and every limit is set around it. */
final class RandomKitchen {
    private static final int PARTS = 1000;

    private final Random random;
    private final int size;

    private RandomKitchen(Random random, int size) {
        this.random = random;
        this.size = size;
    }

    /** All problems; a failing one shrinks to fewer ingredients and fewer bounds. */
    static Arbitrary<RawProblem> problems() {
        var seeds = Arbitraries.randomValue(Random::nextLong);
        var sizes = Arbitraries.integers().between(4, 14);
        var bounds = Arbitraries.integers().between(3, 12);
        return Combinators.combine(seeds, sizes, bounds)
                .as((seed, size, count) -> new RandomKitchen(new Random(seed), size).problem(count))
                .withoutEdgeCases();
    }

    private RawProblem problem(int boundCount) {
        var batch = BigDecimal.valueOf(10L + random.nextInt(1990), 1);
        var ingredients = ingredients();
        var uses = uses(ingredients, random.nextInt(3) == 0);
        var hidden = shares(uses.size());
        var pantry = ingredients.stream()
                .map(one -> random.nextInt(4) == 0 ? one.withMaxUse(ceiling(one.id(), uses, hidden)) : one)
                .toList();
        var bounds = bounds(boundCount, pantry, uses, batch, hidden);
        return new RawProblem(batch, pantry, offers(pantry, uses, hidden, batch), uses, bounds, hidden);
    }

    private List<RawIngredient> ingredients() {
        var all = new ArrayList<RawIngredient>();
        all.add(new RawIngredient(
                "water", List.of("liquid"), values("100", "0", "0", "1"), percent(100), percent(100)));
        for (int i = 1; i < size; i++) {
            var usable = random.nextInt(3) == 0 ? percent(60 + random.nextInt(40)) : percent(100);
            all.add(new RawIngredient("i" + i, kinds(i), values(), usable, percent(100)));
        }
        return all;
    }

    /** The first two always give the kinds that stages and lists of kinds name. */
    private List<String> kinds(int i) {
        if (i <= 2) {
            return List.of(i == 1 ? "texturate" : "binder");
        }
        return List.of("texturate", "binder", "fat").stream()
                .filter(kind -> random.nextInt(3) == 0)
                .toList();
    }

    private Map<String, BigDecimal> values() {
        int water = random.nextInt(700);
        int protein = random.nextInt(1000 - water);
        int fat = random.nextInt(1000 - water - protein);
        return values(tenths(water), tenths(protein), tenths(fat), tenths(random.nextInt(20_000)));
    }

    private Map<String, BigDecimal> values(String water, String protein, String fat, String sodium) {
        var values = new LinkedHashMap<String, BigDecimal>();
        values.put("WATER", new BigDecimal(water));
        values.put("PROCNT", new BigDecimal(protein));
        values.put("FAT", new BigDecimal(fat));
        values.put("NA", new BigDecimal(sodium));
        values.put("bite", BigDecimal.valueOf(random.nextInt(100), 1));
        values.put("tone", BigDecimal.valueOf(random.nextInt(100) - 40L, 1));
        return values;
    }

    private static List<RawUse> uses(List<RawIngredient> ingredients, boolean staged) {
        var uses = new ArrayList<RawUse>();
        for (var ingredient : ingredients) {
            boolean isSoaked = staged && ingredient.kinds().contains("texturate");
            uses.add(new RawUse(ingredient.id(), isSoaked ? RawProblem.SOAK : "mix"));
        }
        if (staged) {
            uses.add(new RawUse("water", RawProblem.SOAK));
        }
        return uses;
    }

    /** Thousandths that sum to one; about a third are nothing. */
    private List<BigFraction> shares(int count) {
        var weights =
                random.ints(count, -4, 10).map(weight -> Math.max(0, weight)).toArray();
        weights[0]++;
        int total = Arrays.stream(weights).sum();
        var parts = new ArrayList<Integer>();
        Arrays.stream(weights).forEach(weight -> parts.add(PARTS * weight / total));
        int rest = PARTS - parts.stream().mapToInt(Integer::intValue).sum();
        parts.set(0, parts.get(0) + rest);
        return parts.stream().map(part -> BigFraction.of(part, PARTS)).toList();
    }

    private BigDecimal ceiling(String id, List<RawUse> uses, List<BigFraction> hidden) {
        var used = Exact.decimal(total(id, uses, hidden).multiply(100), 3, RoundingMode.CEILING);
        return used.add(percent(random.nextInt(2) * random.nextInt(10))).min(percent(100));
    }

    private static BigFraction total(String id, List<RawUse> uses, List<BigFraction> hidden) {
        var total = BigFraction.ZERO;
        for (int i = 0; i < uses.size(); i++) {
            total = uses.get(i).ingredient().equals(id) ? total.add(hidden.get(i)) : total;
        }
        return total;
    }

    private List<RawOffer> offers(
            List<RawIngredient> pantry, List<RawUse> uses, List<BigFraction> hidden, BigDecimal batch) {
        var offers = new ArrayList<RawOffer>();
        for (var ingredient : pantry) {
            var bought = total(ingredient.id(), uses, hidden)
                    .multiply(Exact.of(batch))
                    .divide(ingredient.kept());
            offers.add(offer(ingredient.id(), "north", bought));
            if (random.nextInt(3) == 0) {
                offers.add(offer(ingredient.id(), "south", BigFraction.ZERO));
            }
        }
        return offers;
    }

    /** What the hidden blend buys can be had, if sometimes no more than that. */
    private RawOffer offer(String id, String supplier, BigFraction bought) {
        var most = Exact.decimal(bought, 6, RoundingMode.CEILING)
                .add(BigDecimal.valueOf(random.nextInt(2) * (long) random.nextInt(300), 2));
        var available = random.nextInt(4) == 0 ? Optional.of(most) : Optional.<BigDecimal>empty();
        var price = BigDecimal.valueOf(random.nextInt(3000), 2);
        return new RawOffer(id, supplier, price, random.nextInt(4) == 0 ? 5 : 1, available);
    }

    private List<RawBound> bounds(
            int count, List<RawIngredient> pantry, List<RawUse> uses, BigDecimal batch, List<BigFraction> hidden) {
        var byId = pantry.stream().collect(Collectors.toMap(RawIngredient::id, Function.identity()));
        var ids = pantry.stream().map(RawIngredient::id).toList();
        var draw = new BoundDraw(random, new Picks(byId, uses), ids, batch, hidden);
        var bounds = new ArrayList<RawBound>();
        for (int i = 0; i < count; i++) {
            draw.ofBatch("/bounds/" + bounds.size()).ifPresent(bounds::add);
        }
        if (uses.size() > pantry.size()) {
            draw.ofStageShare("/stages/0/share").ifPresent(bounds::add);
            draw.ofStage("/stages/0/bounds/0").ifPresent(bounds::add);
        }
        return bounds;
    }

    private static BigDecimal percent(int number) {
        return BigDecimal.valueOf(number);
    }

    private static String tenths(int number) {
        return BigDecimal.valueOf(number, 1).toPlainString();
    }
}
