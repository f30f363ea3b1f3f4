package panade.assemble.open;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.LimitKind;
import panade.result.BlendResult;
import panade.result.BlendResult.BlendLine;
import panade.result.BoundResult;
import panade.result.open.MovedResult;
import panade.result.open.MovedResult.BindingMoved;
import panade.result.open.MovedResult.ShareMoved;

/** Compares two blends of one product. */
public final class MovedResults {
    /** A share that moves by less than a thousandth of a per cent is not told. */
    private static final BigFraction MIN_SHOWN_CHANGE = BigFraction.of(1, 100_000);

    private MovedResults() {}

    /** What moved from one blend to the other. */
    public static MovedResult of(BlendResult from, BlendResult to) {
        return new MovedResult(from.cost().perKg(), to.cost().perKg(), shares(from, to), bindings(from, to));
    }

    private static List<ShareMoved> shares(BlendResult from, BlendResult to) {
        var names = new LinkedHashMap<String, String>();
        from.blend().forEach(line -> names.put(line.ingredient(), line.name()));
        to.blend().forEach(line -> names.put(line.ingredient(), line.name()));
        var before = total(from);
        var after = total(to);
        return names.entrySet().stream()
                .map(each -> new ShareMoved(
                        each.getValue(),
                        before.getOrDefault(each.getKey(), BigFraction.ZERO),
                        after.getOrDefault(each.getKey(), BigFraction.ZERO)))
                .filter(each -> each.change().abs().compareTo(MIN_SHOWN_CHANGE) >= 0)
                .sorted(Comparator.comparing((ShareMoved each) -> each.change().abs())
                        .reversed())
                .toList();
    }

    private static Map<String, BigFraction> total(BlendResult result) {
        var shares = new LinkedHashMap<String, BigFraction>();
        for (BlendLine line : result.blend()) {
            shares.merge(line.ingredient(), line.share(), BigFraction::add);
        }
        return shares;
    }

    private static List<BindingMoved> bindings(BlendResult from, BlendResult to) {
        var before = byPlace(from);
        var after = byPlace(to);
        var places = new LinkedHashSet<>(after.keySet());
        places.addAll(before.keySet());
        var moved = new ArrayList<BindingMoved>();
        for (var place : places) {
            var old = before.get(place);
            var fresh = after.get(place);
            var was = old == null ? null : old.binding();
            var is = fresh == null ? null : fresh.binding();
            if (was != is) {
                moved.add(new BindingMoved(
                        Objects.requireNonNull(fresh == null ? old : fresh).title(), is));
            }
        }
        return moved;
    }

    /** Bounds by where they are written; a bound stays itself when its number changes, and with it perhaps its name. */
    private static Map<List<String>, BoundResult> byPlace(BlendResult result) {
        var bounds = new LinkedHashMap<List<String>, BoundResult>();
        result.bounds()
                .get()
                .forEach(bound -> bounds.put(
                        List.of(bound.file(), bound.path(), bound.kind() == LimitKind.RULE ? bound.name() : ""),
                        bound));
        return bounds;
    }
}
