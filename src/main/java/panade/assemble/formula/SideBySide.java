package panade.assemble.formula;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Bound;
import panade.domain.Stage;
import panade.domain.Use;
import panade.result.formula.CompareResult.Asked;
import panade.result.formula.CompareResult.BoundRow;
import panade.result.formula.CompareResult.HoldingRow;
import panade.result.formula.CompareResult.WeightRow;
import panade.result.formula.MadeResult;

/** Rows with a place for each of the things that are compared. */
final class SideBySide {
    private final List<Compared> compared;
    private final List<Optional<MadeResult>> made;

    SideBySide(List<Compared> compared, List<Optional<MadeResult>> made) {
        this.compared = compared;
        this.made = made;
    }

    /** Stage by stage; in each the lines of the first in their order, and then what others add. */
    List<WeightRow> weights() {
        var stages = new LinkedHashMap<String, String>();
        var names = new HashMap<String, String>();
        var uses = new LinkedHashSet<Use>();
        for (var one : compared) {
            one.brief().stages().forEach(stage -> stages.putIfAbsent(stage.id(), stage.title()));
            weighed(one).keySet().forEach(use -> {
                uses.add(use);
                names.computeIfAbsent(
                        use.ingredient(), id -> one.brief().set().ingredient(id).name());
            });
        }
        var order = inOrder(stages.keySet());
        var shares = compared.stream().map(SideBySide::weighed).toList();
        return uses.stream()
                .sorted(Comparator.comparing(use -> order.indexOf(use.stage())))
                .map(use -> new WeightRow(
                        stages.getOrDefault(use.stage(), use.stage()),
                        names.getOrDefault(use.ingredient(), use.ingredient()),
                        each(i -> compared.get(i).blend() == null ? null : kilograms(shares.get(i), use))))
                .toList();
    }

    /** Stages as they are met, what they are folded into last. */
    private static List<String> inOrder(Set<String> stages) {
        var order = new ArrayList<>(stages);
        order.remove(Stage.MIX);
        order.add(Stage.MIX);
        return order;
    }

    private static Map<Use, BigFraction> weighed(Compared one) {
        var shares = new LinkedHashMap<Use, BigFraction>();
        var blend = one.blend();
        if (blend != null) {
            blend.lines().forEach(line -> shares.merge(line.use(), line.share(), BigFraction::add));
        }
        return shares;
    }

    private BigFraction kilograms(Map<Use, BigFraction> shares, Use use) {
        return shares.getOrDefault(use, BigFraction.ZERO)
                .multiply(compared.get(0).brief().batch().base());
    }

    private <T> List<@Nullable T> each(Function<Integer, @Nullable T> of) {
        var values = new ArrayList<@Nullable T>();
        IntStream.range(0, compared.size()).forEach(i -> values.add(of.apply(i)));
        return values;
    }

    /** Bounds that something breaks, and then those that are not asked alike of all. */
    List<BoundRow> bounds() {
        var titles = new LinkedHashMap<String, String>();
        var asked = compared.stream().map(one -> new HashMap<String, Asked>()).toList();
        for (int i = 0; i < compared.size(); i++) {
            var bounds = compared.get(i).brief().bounds();
            var values = made.get(i).map(MadeResult::bounds).orElse(List.of());
            for (int k = 0; k < values.size(); k++) {
                var key = key(bounds.get(k), asked.get(i).keySet());
                titles.putIfAbsent(key, bounds.get(k).title());
                asked.get(i).put(key, asked(values.get(k)));
            }
        }
        return titles.entrySet().stream()
                .map(title ->
                        new BoundRow(title.getValue(), each(i -> asked.get(i).get(title.getKey()))))
                .filter(row -> isBroken(row) || !isAskedAlike(row))
                .sorted(Comparator.comparing(row -> !isBroken(row)))
                .toList();
    }

    /** What a bound is called, and which of those in its brief that are called so it is. */
    private static String key(Bound bound, Set<String> before) {
        var key = bound.name();
        for (int i = 2; before.contains(key); i++) {
            key = bound.name() + "\n" + i;
        }
        return key;
    }

    private static Asked asked(MadeResult.Bound bound) {
        return new Asked(bound.value(), bound.min(), bound.max(), bound.unit(), bound.met());
    }

    private static boolean isBroken(BoundRow row) {
        return row.of().stream().anyMatch(each -> each != null && Boolean.FALSE.equals(each.met()));
    }

    /** What is asked of a thing that is no blend is not known, and does not count. */
    private boolean isAskedAlike(BoundRow row) {
        var first = IntStream.range(0, compared.size())
                .filter(i -> made.get(i).isPresent())
                .mapToObj(row.of()::get)
                .toList();
        return first.stream().allMatch(each -> isAlike(each, first.get(0)));
    }

    private static boolean isAlike(@Nullable Asked one, @Nullable Asked other) {
        if (one == null || other == null) {
            return Objects.equals(one, other);
        }
        if (one.met() == null || other.met() == null) {
            return true;
        }
        return Objects.equals(one.min(), other.min())
                && Objects.equals(one.max(), other.max())
                && one.unit().equals(other.unit());
    }

    /** Properties in the order in which they are met; one that two sets measure otherwise has two rows. */
    List<HoldingRow> holdings() {
        return made.stream()
                .flatMap(Optional::stream)
                .flatMap(each -> each.properties().stream())
                .map(each -> new HoldingRow(each.title(), each.unit(), each(i -> held(i, each))))
                .distinct()
                .filter(row -> row.values().stream().anyMatch(Objects::nonNull))
                .toList();
    }

    private @Nullable BigFraction held(int i, MadeResult.Property property) {
        return made.get(i).stream()
                .flatMap(each -> each.properties().stream())
                .filter(each -> each.property().equals(property.property())
                        && each.unit().equals(property.unit()))
                .findFirst()
                .map(MadeResult.Property::value)
                .orElse(null);
    }
}
