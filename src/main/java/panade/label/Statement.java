package panade.label;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.pantry.AllergenGroup;
import panade.domain.pantry.Ingredient;
import panade.label.nutrition.Amount;
import panade.label.nutrition.Format;
import panade.label.nutrition.RoundingRule;
import panade.quantity.Quantity;

/**
 * The ingredient statement: label names in descending order by weight as added, the same name summed, what an
 * ingredient is made of in brackets behind it (21 CFR 101.4(a)(1) and (b)(2); Regulation (EU) 1169/2011, Article 18 and
 * Annex VII).
 *
 * @param names in the order of the weights
 * @param minor how many of them, at the end, are gathered behind the clause
 * @param clause what stands before those; empty when none are gathered
 */
public record Statement(List<Name> names, int minor, String clause) {
    public Statement {
        names = List.copyOf(names);
    }

    /**
     * A name on the label.
     *
     * @param label the name
     * @param share of the batch
     * @param words the name as printed, with brackets and, where the law asks, its allergens in capitals
     * @param ingredients ids of what goes under that name
     * @param hasParts whether what it is made of is stated
     */
    public record Name(String label, BigFraction share, String words, List<String> ingredients, boolean hasParts) {
        public Name {
            ingredients = List.copyOf(ingredients);
        }
    }

    /**
     * The statement of a blend.
     *
     * @param tail names at this share or less are gathered at the end; null to gather none
     */
    static Statement of(Brief brief, Blend blend, Format format, @Nullable Quantity tail) {
        return of(brief, blend, format, tail, ingredient -> PrintedName.of(ingredient, format));
    }

    private static Statement of(
            Brief brief, Blend blend, Format format, @Nullable Quantity tail, Function<Ingredient, String> labels) {
        Map<String, BigFraction> shares = new LinkedHashMap<>();
        Map<String, Set<Ingredient>> under = new LinkedHashMap<>();
        Amount.shares(brief, blend).forEach((ingredient, share) -> {
            var label = labels.apply(ingredient);
            shares.merge(label, share, BigFraction::add);
            under.computeIfAbsent(label, each -> new LinkedHashSet<>()).add(ingredient);
        });
        var names = new ArrayList<Name>();
        shares.forEach((label, share) -> names.add(name(label, share, under.getOrDefault(label, Set.of()), format)));
        names.sort((a, b) -> {
            int heavier = b.share().compareTo(a.share());
            return heavier != 0 ? heavier : a.label().compareTo(b.label());
        });
        int minor = tail == null ? 0 : gathered(names, tail, format);
        return new Statement(names, minor, minor > 0 && tail != null ? clause(tail, format) : "");
    }

    /** The names that a blend has on its label, in their order, as the ingredient set calls them under any law. */
    public static List<String> names(Brief brief, Blend blend) {
        return of(brief, blend, Format.US, null, Ingredient::label).labels();
    }

    private static int gathered(List<Name> names, Quantity tail, Format format) {
        return (int) names.stream()
                .filter(name -> {
                    int side = name.share().compareTo(tail.base());
                    return side < 0 || (side == 0 && format == Format.US);
                })
                .count();
    }

    /** 21 CFR 101.4(a)(2); in the Union small amounts may follow in any order without a clause (Annex VII, part A). */
    private static String clause(Quantity tail, Format format) {
        return format == Format.US
                ? "Contains " + RoundingRule.plain(tail.base().multiply(100).bigDecimalValue(1, RoundingMode.HALF_UP))
                        + "% or less of: "
                : "";
    }

    private static Name name(String label, BigFraction share, Set<Ingredient> under, Format format) {
        var parts = new LinkedHashSet<String>();
        under.forEach(ingredient -> parts.addAll(ingredient.labelling().parts()));
        var printed = PrintedName.withClass(label, under, format);
        var words = parts.isEmpty() ? printed : printed + " (" + String.join(", ", parts) + ")";
        return new Name(
                label,
                share,
                format == Format.EU ? emphasised(words, under) : words,
                under.stream().map(Ingredient::id).toList(),
                !parts.isEmpty());
    }

    /** Allergens stand out in capitals; those that the name does not tell follow in brackets (Article 21(1)). */
    private static String emphasised(String words, Set<Ingredient> under) {
        var text = words;
        var untold = new TreeSet<String>();
        for (var allergen : allergens(under)) {
            var told = AllergenGroup.of(allergen).map(group -> named(words, AllergenNames.tellers(allergen)));
            if (told.isPresent() && told.get().isEmpty()) {
                untold.add(allergen.toUpperCase(Locale.ROOT));
            }
            for (var word : told.orElse(List.of())) {
                text = word.matcher(text).replaceAll(found -> found.group().toUpperCase(Locale.ROOT));
            }
        }
        return untold.isEmpty() ? text : text + " (" + String.join(", ", untold) + ")";
    }

    private static Set<String> allergens(Set<Ingredient> under) {
        var all = new TreeSet<String>();
        under.stream().map(Ingredient::allergens).filter(Objects::nonNull).forEach(all::addAll);
        return all;
    }

    /** Those that stand in the name. */
    private static List<Pattern> named(String words, List<String> tellers) {
        return tellers.stream()
                .map(word -> Pattern.compile("(?i)\\b" + Pattern.quote(word) + "\\b"))
                .filter(word -> word.matcher(words).find())
                .toList();
    }

    /** The statement as it would be printed. */
    public String text() {
        int first = names.size() - minor;
        var major = String.join(
                ", ", names.subList(0, first).stream().map(Name::words).toList());
        var rest = String.join(
                ", ",
                names.subList(first, names.size()).stream().map(Name::words).toList());
        var joint = major.isEmpty() || rest.isEmpty() ? "" : clause.isEmpty() ? ", " : ". ";
        return major + joint + clause + rest + ".";
    }

    /** The names in order, as a label shows them. */
    public List<String> labels() {
        return names.stream().map(Name::label).toList();
    }
}
