package panade.intake.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import panade.domain.pantry.Property;

/** What the columns of a table are as their heads have it, where those do not bear our names already. */
final class HeadGuesses {
    private static final String PRICE = "price";

    private final Table table;
    private final Map<String, Property> properties;
    private final boolean prices;
    private final Map<String, Map<Integer, Guess>> byName = new LinkedHashMap<>();
    private final Set<String> stated = new LinkedHashSet<>();

    private HeadGuesses(Table table, Map<String, Property> properties, boolean prices) {
        this.table = table;
        this.properties = properties;
        this.prices = prices;
        for (int i = 0; i < table.headings().size(); i++) {
            look(i);
        }
    }

    /** Guesses about a table of prices. */
    static HeadGuesses ofPrices(Table table) {
        return new HeadGuesses(table, Map.of(), true);
    }

    /** Guesses about a table of ingredients with what is known of components and traits. */
    static HeadGuesses ofComposition(Table table, Map<String, Property> properties) {
        return new HeadGuesses(table, properties, false);
    }

    private void look(int column) {
        var heading = table.headings().get(column);
        var original = table.original(column);
        var guess = prices ? price(original) : composition(original);
        boolean renamed = !heading.equals(original);
        if (renamed || isOurs(heading)) {
            stated.add(base(heading));
            // What a price is for stands in its head, whoever named the column.
            guess.filter(found -> base(heading).equals(PRICE) && !found.words().equals(PRICE))
                    .ifPresent(found -> put(column, found));
        } else {
            guess.ifPresent(found -> put(column, found));
        }
    }

    private void put(int column, Guess guess) {
        byName.computeIfAbsent(base(guess.name()), name -> new LinkedHashMap<>())
                .put(column, guess);
    }

    private boolean isOurs(String heading) {
        return properties.containsKey(heading)
                || properties.containsKey(heading.replaceAll("\\s*\\(.*", ""))
                || heading.equalsIgnoreCase(PRICE)
                || guessed(heading).filter(name -> name.equals(base(heading))).isPresent();
    }

    private Optional<String> guessed(String heading) {
        return prices ? HeadWords.ofPrices(heading) : HeadWords.ofComposition(heading, properties);
    }

    private Optional<Guess> price(String heading) {
        var sheet = table.grid().name();
        return HeadWords.ofPrices(heading)
                .map(name -> new Guess(sheet, heading, name, "", ""))
                .or(() -> PriceHead.of(heading)
                        .map(found -> new Guess(sheet, heading, PRICE, found.per(), found.currency())));
    }

    private Optional<Guess> composition(String heading) {
        return HeadWords.ofComposition(heading, properties)
                .map(name -> new Guess(table.grid().name(), heading, name, "", ""));
    }

    /** Our name without a unit, in small letters. */
    private static String base(String name) {
        return name.replaceAll("\\s*\\(.*", "").toLowerCase(Locale.ROOT);
    }

    /** Whether there is a column, or several that may be it, for each of the names. */
    boolean have(Set<String> names) {
        return names.stream().allMatch(name -> stated.contains(name) || byName.containsKey(name));
    }

    /** Whether any column is one of a component or a trait. */
    boolean haveProperty() {
        return properties.keySet().stream().anyMatch(id -> have(Set.of(base(id))));
    }

    /** The table with our names; where two heads fit one of them nothing is guessed, and that is a fault. */
    Table named(Faults faults) {
        var names = new ArrayList<>(table.headings());
        var guesses = new ArrayList<Guess>();
        byName.forEach((name, columns) -> {
            boolean price = name.equals(PRICE) && stated.contains(PRICE);
            var first = columns.keySet().iterator().next();
            var guess = columns.get(first);
            if (price) {
                columns.forEach((column, found) -> {
                    if (base(names.get(column)).equals(PRICE)) {
                        guesses.add(found);
                    }
                });
            } else if (!stated.contains(name) && columns.size() == 1 && guess != null) {
                names.set(first, guess.name());
                guesses.add(guess);
            } else if (!stated.contains(name)) {
                clash(name, columns, faults);
            }
        });
        return new Table(table.file(), table.grid(), names, table.head(), guesses);
    }

    private void clash(String name, Map<Integer, Guess> columns, Faults faults) {
        var heads = columns.values().stream()
                .map(guess -> "\"" + guess.heading() + "\"")
                .toList();
        var options = columns.values().stream()
                .map(guess -> "--column \"" + guess.heading() + "=" + guess.name() + "\"")
                .toList();
        var last = List.copyOf(columns.keySet()).get(columns.size() - 1);
        faults.add(
                table.headOrigin(last),
                "Several heads fit \"" + name + "\": " + String.join(" and ", heads),
                "Expected to be told which one it is: " + String.join(" or ", options) + ".");
    }
}
