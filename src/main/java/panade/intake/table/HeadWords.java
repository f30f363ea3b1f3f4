package panade.intake.table;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import panade.domain.pantry.Property;
import panade.domain.pantry.PropertyWords;
import panade.quantity.Unit;

/** Heads that other people's tables commonly have, and what their columns are in ours; common practice, no source. */
final class HeadWords {
    private static final String GOODS = "ingredient, ingredient name, item, item name, item description, product,"
            + " product name, product description, description, article, material, goods, commodity, food, name";

    private static final Map<String, String> PRICES = words(Map.of(
            "ingredient", GOODS,
            "supplier", "supplier name, vendor, vendor name, seller, from",
            "per", "unit, price unit, uom, unit of measure, per unit, price per, price for, basis, price basis",
            "pack",
                    "pack size, packs, packing, package, package size, packaging, sold in, bag size, case size, unit size,"
                            + " size",
            "minimum", "minimum order, min order, min order qty, minimum order quantity, minimum quantity, moq, min",
            "available", "stock, in stock, availability, available stock, available quantity, on hand",
            "currency", "currency code, ccy, money",
            "note", "notes, remark, remarks, comment, comments"));

    private static final Map<String, String> COMPOSITION = words(Map.of(
            "name", GOODS,
            "kinds", "kind",
            "allergens", "allergen",
            "note", "notes, remark, remarks, comment, comments"));

    private static final Pattern MEASURED = Pattern.compile(
            "(.*?)[\\s,]*\\(?\\s*(g|mg|\u00b5g|\u03bcg|ug|mcg|kcal|%)?\\s*(?:(?:/|per|in)\\s*100\\s*g)?\\s*\\)?",
            Pattern.CASE_INSENSITIVE);

    private HeadWords() {}

    /** The column of a price list that a head says; the price itself is {@link PriceHead}'s. */
    static Optional<String> ofPrices(String heading) {
        return Optional.ofNullable(PRICES.get(plain(heading)));
    }

    /** The column of a table of ingredients that a head says, or the property with its unit. */
    static Optional<String> ofComposition(String heading, Map<String, Property> properties) {
        return Optional.ofNullable(COMPOSITION.get(plain(heading))).or(() -> property(heading, properties));
    }

    /** A component in grams needs no unit; milligrams and kilocalories are not guessed at. */
    private static Optional<String> property(String heading, Map<String, Property> properties) {
        var match = MEASURED.matcher(heading.strip());
        if (!match.matches()) {
            return Optional.empty();
        }
        var word = match.group(1).isBlank() ? heading : match.group(1);
        var property = PropertyWords.tagname(word).map(properties::get);
        var unit = Optional.ofNullable(match.group(2)).map(HeadWords::per100g).orElse("g/100g");
        return property.filter(found -> Unit.find(unit)
                        .filter(each -> each.measuresLike(found.unit()))
                        .isPresent())
                .filter(found -> match.group(2) != null || found.unit().symbol().equals("g/100g"))
                .map(found -> found.id() + " (" + unit + ")");
    }

    private static String per100g(String unit) {
        return unit.equals("%") ? unit : unit.toLowerCase(Locale.ROOT) + "/100g";
    }

    private static String plain(String heading) {
        return heading.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }

    private static Map<String, String> words(Map<String, String> byColumn) {
        var found = new HashMap<String, String>();
        byColumn.forEach((column, words) -> {
            found.put(column, column);
            for (var word : words.split(", ", -1)) {
                found.put(word, column);
            }
        });
        return Map.copyOf(found);
    }
}
