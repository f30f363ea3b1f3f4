package panade.document.syntax;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Finds names that refer back to themselves. */
public final class Circles {
    private Circles() {}

    /** The names on a shortest way from a name back to itself, that name first; empty when there is none. */
    public static Optional<Set<String>> through(String name, Function<String, Collection<String>> references) {
        var cameFrom = new HashMap<String, String>();
        var open = new ArrayDeque<String>();
        open.add(name);
        while (!open.isEmpty() && !cameFrom.containsKey(name)) {
            var here = open.remove();
            for (var next : references.apply(here)) {
                if (cameFrom.putIfAbsent(next, here) == null) {
                    open.add(next);
                }
            }
        }
        return cameFrom.containsKey(name) ? Optional.of(way(name, cameFrom)) : Optional.empty();
    }

    private static Set<String> way(String name, Map<String, String> cameFrom) {
        var back = new ArrayList<String>();
        for (var at = cameFrom.get(name); at != null && !at.equals(name); at = cameFrom.get(at)) {
            back.add(at);
        }
        back.add(name);
        Collections.reverse(back);
        return new LinkedHashSet<>(back);
    }

    /** The names in turn, back to the first. */
    public static String words(Set<String> circle) {
        var first = circle.iterator().next();
        return circle.stream().map(name -> "\"" + name + "\"").collect(Collectors.joining(" -> ")) + " -> \"" + first
                + "\"";
    }
}
