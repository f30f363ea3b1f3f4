package panade.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.pantry.AllergenGroup;
import panade.domain.pantry.Ingredient;
import panade.label.Panel.Row;
import panade.label.Statement.Name;
import panade.label.nutrition.Amount;
import panade.label.nutrition.Format;
import panade.label.nutrition.RoundingRule;
import panade.quantity.Decimal;

/** What a finished label needs beyond the draft, each with the paragraph that asks for it. */
record StillNeeded(Brief brief, Blend blend, PanelRequest request, Statement statement, List<Row> rows) {
    /** As one word up to this share: Annex VII, Part B. */
    private static final BigFraction SPICES = Decimal.of("0.02");

    private static final int SHORTEST_WORD = 4;

    List<Caution> list() {
        var needs = new ArrayList<Caution>();
        if (request.format() == Format.US) {
            inTheStates(needs);
        } else {
            inTheUnion(needs);
        }
        return List.copyOf(needs);
    }

    private void inTheStates(List<Caution> needs) {
        needs.add(new Caution(
                "The statement of identity: the food's common or usual name, with what plant it is of, on the principal"
                        + " display panel.",
                "21 CFR 101.3"));
        needs.add(new Caution("The net quantity of contents, in ounces or pounds and in grams.", "21 CFR 101.7"));
        needs.add(new Caution("Name and place of business of who makes, packs or distributes it.", "21 CFR 101.5"));
        var serving = request.serving() == null ? brief.practice().serving() : request.serving();
        needs.add(
                serving == null
                        ? new Caution("A serving, in a household measure and in grams.", "21 CFR 101.9(b)(5) and (7)")
                        : new Caution(
                                "The serving in a household measure before its grams, such as 1/2 cup ("
                                        + serving.text() + "): measure how much that is.",
                                "21 CFR 101.9(b)(5)"));
        if (request.pack() == null) {
            needs.add(new Caution("Servings in a package: say --pack.", "21 CFR 101.9(b)(8)"));
        }
        addFigures(needs, "21 CFR 101.9(c)");
        addParts(needs, "21 CFR 101.4(b)(2)");
        addKinds(needs, "21 USC 343(w)(2)");
    }

    private void inTheUnion(List<Caution> needs) {
        needs.add(new Caution("The name of the food.", "Regulation (EU) 1169/2011, Article 17"));
        needs.add(new Caution("The net quantity.", "Article 23"));
        needs.add(new Caution(
                "The use-by date, how to store it, and how to cook it: highly perishable food has a use-by date.",
                "Articles 24, 25 and 27"));
        needs.add(new Caution("Name and address of who answers for it.", "Articles 8(1) and 9(1)(h)"));
        needs.add(new Caution("Where it comes from, if the label would mislead without that.", "Article 26"));
        needs.add(new Caution(quantities(), "Article 22 and Annex VIII"));
        addFigures(needs, "Article 30(1)");
        addNames(needs);
        addParts(needs, "Annex VII, Part E");
        addKinds(needs, "Annex II and Article 21(1)");
    }

    /** The figures of the mandatory lines that are not known. */
    private void addFigures(List<Caution> needs, String source) {
        var unknown = rows.stream().filter(row -> !row.isKnown()).map(Row::name).toList();
        if (!unknown.isEmpty()) {
            needs.add(new Caution("Figures for " + String.join(", ", unknown) + ".", source));
        }
    }

    private void addParts(List<Caution> needs, String source) {
        var names = labels(ingredients().filter(PrintedName::lacksParts));
        if (!names.isEmpty()) {
            needs.add(new Caution(
                    "What " + String.join(", ", names) + (names.size() == 1 ? " is" : " are")
                            + " made of, in brackets behind the name: \"madeOf\" in the ingredient set, [] for a single"
                            + " thing.",
                    source));
        }
    }

    /** Nuts, fish and the like of which only the general word is stated. */
    private void addKinds(List<Caution> needs, String source) {
        ingredients().forEach(ingredient -> {
            var stated = ingredient.allergens();
            for (var word : stated == null
                    ? List.<String>of()
                    : stated.stream().sorted().toList()) {
                AllergenGroup.of(word)
                        .filter(group -> group != AllergenGroup.WHEAT && group.isGeneral(word))
                        .filter(group -> AllergenNames.wantsKinds(group, request.format()))
                        .ifPresent(group -> needs.add(new Caution(
                                "Which " + word + " " + ingredient.name() + " carries: the law wants the kind named.",
                                source)));
            }
        });
    }

    private void addNames(List<Caution> needs) {
        for (var name : statement.names()) {
            if (PrintedName.isCollective(name.label()) && name.share().compareTo(SPICES) > 0 && !name.hasParts()) {
                needs.add(new Caution(
                        "Each of the " + name.label()
                                + " by its own name: one word for all is for 2 % at most, and they make "
                                + percent(name) + ".",
                        "Annex VII, Part B"));
            }
            PrintedName.inTheUnion(name.label())
                    .ifPresent(better -> needs.add(new Caution(
                            "Another name for " + name.label() + ": " + better + "; \"labelIn\" in the ingredient set.",
                            "Article 18(2), Annex VII")));
        }
        var seen = new ArrayList<String>();
        ingredients().filter(ingredient -> !seen.contains(ingredient.label())).forEach(ingredient -> {
            PrintedName.unclassed(ingredient)
                    .ifPresent(number -> needs.add(new Caution(
                            "The class of " + ingredient.label() + " (" + number
                                    + ") before its name, such as \"stabiliser\": \"additive\" in the ingredient set.",
                            "Annex VII, Part C")));
            seen.add(ingredient.label());
        });
    }

    /** Shares of what the product's title names, as a start. */
    private String quantities() {
        var words = List.of(brief.title().toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1));
        var named = statement.names().stream()
                .filter(name -> Stream.of(name.label().toLowerCase(Locale.ROOT).split("[^\\p{L}]+", -1))
                        .anyMatch(word -> word.length() >= SHORTEST_WORD && words.contains(word)))
                .map(name -> name.label() + " " + percent(name))
                .toList();
        return "In per cent of the mix, the quantity of each ingredient that stands in the name of the food or is set off in"
                + " words or pictures"
                + (named.isEmpty() ? "." : " (in the title here: " + String.join(", ", named) + ").");
    }

    private static String percent(Name name) {
        return RoundingRule.plain(Decimal.round(name.share().multiply(100), 1)) + " %";
    }

    private Stream<Ingredient> ingredients() {
        return Amount.shares(brief, blend).entrySet().stream().map(Map.Entry::getKey);
    }

    private List<String> labels(Stream<Ingredient> ingredients) {
        return ingredients
                .map(ingredient -> PrintedName.of(ingredient, request.format()))
                .distinct()
                .toList();
    }
}
