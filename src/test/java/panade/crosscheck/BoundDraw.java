package panade.crosscheck;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;

/** Draws bounds of every form around what a hidden blend has, so that the hidden blend meets them all. */
final class BoundDraw {
    /** Places that hold every value of a hidden blend that is a short decimal. */
    private static final int EXACT_PLACES = 12;

    private final Random random;
    private final Picks picks;
    private final List<String> ids;
    private final List<String> kinds;
    private final BigDecimal batch;
    private final List<BigFraction> hidden;

    BoundDraw(Random random, Picks picks, List<String> ids, BigDecimal batch, List<BigFraction> hidden) {
        this.random = random;
        this.picks = picks;
        this.ids = ids;
        this.kinds = picks.pantry().values().stream()
                .flatMap(ingredient -> ingredient.kinds().stream())
                .distinct()
                .toList();
        this.batch = batch;
        this.hidden = hidden;
    }

    /** A bound of the brief; empty when the hidden blend has no value for it. */
    Optional<RawBound> ofBatch(String path) {
        return switch (random.nextInt(6)) {
            case 0, 1 -> limited(path, massPick(), 100, "%");
            case 2 -> property(path);
            case 3 -> amount(path, massPick());
            case 4 -> ratio(path);
            default -> mean(path);
        };
    }

    /** A bound of the soak stage. */
    Optional<RawBound> ofStage(String path) {
        var stage = picks.stage(RawProblem.SOAK);
        var water = new Pick(
                "\"ingredient\": \"water\"",
                Exact.both(picks.ingredient("water").form(), stage.form()));
        return switch (random.nextInt(3)) {
            case 0 -> limited(path, water.json(), water.form(), Optional.of(stage.form()), 100, "%");
            case 1 -> amount(path, water);
            default -> hydration(path, water, stage);
        };
    }

    /** The stage's own share of the batch. */
    Optional<RawBound> ofStageShare(String path) {
        return limited(path, new Pick("", picks.stage(RawProblem.SOAK).form()), 100, "%");
    }

    private Optional<RawBound> hydration(String path, Pick water, Pick stage) {
        var per = random.nextBoolean() ? picks.kind("texturate") : picks.property("PROCNT");
        return limited(
                path, relative(water, per), water.form(), Optional.of(Exact.both(per.form(), stage.form())), 1, "");
    }

    private Pick massPick() {
        return switch (random.nextInt(7)) {
            case 0 -> picks.ingredient(id());
            case 1 -> picks.kind(kind());
            case 2 -> picks.anyOf(List.of(ids.get(0), ids.get(1 + random.nextInt(ids.size() - 1))));
            case 3 -> picks.weighted(ids.get(0), ids.get(1 + random.nextInt(ids.size() - 1)));
            case 4 -> picks.kind(kind()).plus(picks.ingredient("water").within(waterPlace()));
            case 5 -> picks.eitherKind("texturate", "binder");
            default -> picks.property(main()).within(place());
        };
    }

    private Optional<RawBound> property(String path) {
        return switch (random.nextInt(4)) {
            case 0 -> limited(path, picks.property("NA"), 100_000, "mg/100g");
            case 1 -> limited(path, picks.fatAndProtein(), 100, "%");
            case 2 -> limited(path, picks.property(trait()), 1, "");
            default -> limited(path, picks.property(main()), 100, "%");
        };
    }

    private Optional<RawBound> amount(String path, Pick pick) {
        var scaled = new Pick(pick.json(), Exact.scaled(pick.form(), Exact.of(batch)));
        return limited(path, scaled, 1, "kg");
    }

    private Optional<RawBound> ratio(String path) {
        var of = random.nextBoolean() ? massPick() : picks.property(main());
        return switch (random.nextInt(3)) {
            case 0 -> limited(path, of, picks.property("PROCNT"), 1, "");
            case 1 -> limited(path, picks.property("PROCNT").within(place()), picks.property("PROCNT"), 100, "%");
            default -> limited(path, picks.ingredient(id()), picks.kind(kind()), 1, "");
        };
    }

    private Optional<RawBound> mean(String path) {
        var place = picks.kind(kind());
        return switch (random.nextInt(3)) {
            case 0 -> limited(path, picks.property(main()).within(place), place, 100, "%");
            case 1 -> limited(path, picks.property("NA").within(place), place, 100_000, "mg/100g");
            default -> limited(path, picks.property(trait()).within(place), place, 1, "");
        };
    }

    private Optional<RawBound> limited(String path, Pick of, int factor, String unit) {
        return limited(path, of.json(), of.form(), Optional.empty(), factor, unit);
    }

    private Optional<RawBound> limited(String path, Pick of, Pick per, int factor, String unit) {
        return limited(path, relative(of, per), of.form(), Optional.of(per.form()), factor, unit);
    }

    private static String relative(Pick of, Pick per) {
        return of.json() + ", \"per\": {" + per.json() + "}";
    }

    private Optional<RawBound> limited(
            String path,
            String json,
            List<BigFraction> form,
            Optional<List<BigFraction>> per,
            int factor,
            String unit) {
        var of = Exact.scaled(form, BigFraction.of(factor));
        var whole = per.map(side -> Exact.times(side, hidden)).orElse(BigFraction.ONE);
        if (whole.signum() == 0) {
            return Optional.empty();
        }
        var value = Exact.times(of, hidden).divide(whole);
        var bound = new RawBound(path, json, of, per, Optional.empty(), Optional.empty(), unit);
        return sided(bound, value).filter(drawn -> !isOutside(drawn, value));
    }

    private Optional<RawBound> sided(RawBound bound, BigFraction value) {
        var min = Optional.of(limit(value, RoundingMode.FLOOR));
        var max = Optional.of(limit(value, RoundingMode.CEILING));
        return Optional.of(
                switch (random.nextInt(5)) {
                    case 0, 1 -> bound.with(min, Optional.empty());
                    case 2, 3 -> bound.with(Optional.empty(), max);
                    default -> bound.with(min, max);
                });
    }

    /** The hidden blend's own value as often as not: that is what makes optima degenerate. */
    private BigDecimal limit(BigFraction value, RoundingMode mode) {
        if (random.nextBoolean()) {
            return Exact.decimal(value, EXACT_PLACES, mode);
        }
        var room = value.abs().multiply(BigFraction.of(1 + random.nextInt(40), 100));
        return Exact.decimal(mode == RoundingMode.FLOOR ? value.subtract(room) : value.add(room), 3, mode);
    }

    /** A weighted sum may be more than the whole, but a document may not ask for that, not even when tightened. */
    private static boolean isOutside(RawBound bound, BigFraction value) {
        var ceiling = bound.max().map(Exact::of).orElse(value);
        return bound.unit().equals("%") && ceiling.compareTo(BigFraction.of(100)) > 0;
    }

    private Pick place() {
        boolean isStaged = picks.uses().stream().anyMatch(use -> use.stage().equals(RawProblem.SOAK));
        return isStaged && random.nextInt(3) == 0 ? picks.stage(RawProblem.SOAK) : picks.kind(kind());
    }

    private Pick waterPlace() {
        boolean isStaged = picks.uses().stream().anyMatch(use -> use.stage().equals(RawProblem.SOAK));
        return picks.stage(isStaged ? RawProblem.SOAK : "mix");
    }

    private String id() {
        return ids.get(random.nextInt(ids.size()));
    }

    private String kind() {
        return kinds.get(random.nextInt(kinds.size()));
    }

    private String main() {
        return List.of("WATER", "PROCNT", "FAT").get(random.nextInt(3));
    }

    private String trait() {
        return random.nextBoolean() ? "bite" : "tone";
    }
}
