package panade.document.pantry;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import panade.document.syntax.Circles;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Problems;

/** Checks that sums are made of known parts and that none is a part of itself. */
record SumChecks(Traits traits, Map<String, ObjectNode> sums, Problems problems) {
    /** How many sums may be parts of each other in a row: more are a slip, and each is worked out within the next. */
    private static final int DEEPEST = 50;

    void check() {
        sums.values().forEach(sum -> sum.fields().forEach(this::checkKnown));
        var told = new LinkedHashSet<String>();
        for (var name : sums.keySet()) {
            var circle = Circles.through(name, this::parts);
            // A circle is one fault, however many traits lie on it.
            if (circle.isPresent() && told.addAll(circle.get())) {
                tell(name, circle.get());
            }
        }
        if (told.isEmpty()) {
            checkDepth();
        }
    }

    /** Where no sum is a part of itself, depths settle after as many rounds as there are sums in a row. */
    private void checkDepth() {
        var depths = new HashMap<String, Integer>();
        boolean hasRisen = true;
        for (int i = 0; i <= DEEPEST && hasRisen; i++) {
            hasRisen = false;
            for (var name : sums.keySet()) {
                int parts = parts(name).stream()
                        .mapToInt(part -> depths.getOrDefault(part, 0))
                        .max()
                        .orElse(0);
                hasRisen |= !Integer.valueOf(parts + 1).equals(depths.put(name, parts + 1));
                if (parts == DEEPEST) {
                    tellDepth(name);
                    return;
                }
            }
        }
    }

    private void tellDepth(String name) {
        problems.add(
                Objects.requireNonNull(sums.get(name)).origin(),
                "The sum \"" + name + "\" has more than " + DEEPEST + " sums in a row as parts of each other",
                "Expected sums of what ingredients state, or of few such sums.");
    }

    private void checkKnown(Field part) {
        traits.find(part.nameOrigin(), part.name(), problems);
    }

    private void tell(String name, Set<String> circle) {
        problems.add(
                Objects.requireNonNull(sums.get(name)).origin(),
                "The sum \"" + name + "\" is a part of itself: " + Circles.words(circle),
                "Expected a sum of parts that do not contain it.");
    }

    private Collection<String> parts(String name) {
        var sum = Optional.ofNullable(sums.get(name));
        return sum.map(found -> found.fields().stream().map(Field::name).toList())
                .orElse(List.of());
    }
}
