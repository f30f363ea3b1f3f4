package panade.intake.table;

import java.util.Currency;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/**
 * What the head of a column of prices says: {@code USD per kg}, {@code Price (EUR/25 kg)}, {@code cost per bag}.
 *
 * @param per the weight that prices are for; {@link Guess#PACK} for what is sold at once; empty where it does not say
 * @param currency its code; empty where it does not say, or has a sign that several currencies share
 */
record PriceHead(String per, String currency) {
    /** Words for a price; common practice, no source. */
    private static final Set<String> WORDS = Set.of(
            "",
            "price",
            "unit price",
            "net price",
            "quoted price",
            "new price",
            "cost",
            "unit cost",
            "rate",
            "pack price",
            "case price",
            "bag price");

    /** What goods are sold in; common practice, no source. */
    private static final Set<String> PACKS = Set.of(
            "pack", "bag", "sack", "case", "carton", "box", "drum", "pail", "bucket", "tub", "jug", "bottle", "can",
            "tin");

    private static final Set<String> CODES = Currency.getAvailableCurrencies().stream()
            .map(Currency::getCurrencyCode)
            .collect(Collectors.toUnmodifiableSet());

    private static final Pattern PER =
            Pattern.compile("(?:/|\\bper\\b)\\s*((?:\\d+(?:\\.\\d+)?\\s*)?\\p{L}+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern CODE = Pattern.compile("\\b[A-Z]{3}\\b");

    /** What a head says of prices; empty where it is not one of prices. */
    static Optional<PriceHead> of(String heading) {
        var per = PER.matcher(heading);
        boolean stated = per.find();
        var without = stated ? cut(heading, per) : heading;
        var code = CODE.matcher(without);
        var currency = code.find() && CODES.contains(code.group()) ? code.group() : sign(without);
        var rest = currency.length() == 3 && without.contains(currency) ? without.replace(currency, " ") : without;
        var words = words(rest);
        boolean money = !currency.isEmpty() || rest.contains("$");
        if (!WORDS.contains(words) || (words.isEmpty() && !money)) {
            return Optional.empty();
        }
        var weight =
                stated ? weight(per.group(1)) : words.matches("(pack|case|bag) .*") ? Optional.of(Guess.PACK) : none();
        return weight.map(found -> new PriceHead(found, currency));
    }

    private static Optional<String> none() {
        return Optional.of("");
    }

    private static String cut(String heading, Matcher part) {
        return heading.substring(0, part.start()) + " " + heading.substring(part.end());
    }

    /** In small letters, with one space where there is anything else. */
    private static String words(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    /** The code of a sign that only one currency has. */
    private static String sign(String text) {
        return text.contains("\u20ac") ? "EUR" : text.contains("\u00a3") ? "GBP" : "";
    }

    /** A weight or a pack; empty for what says how it is sold and is neither, such as a litre. */
    private static Optional<String> weight(String text) {
        var word = text.toLowerCase(Locale.ROOT);
        if (PACKS.contains(word)) {
            return Optional.of(Guess.PACK);
        }
        if (word.equals("unit")) {
            return none();
        }
        boolean mass = Stream.concat(Unit.find(text).stream(), Quantity.parse(text).map(Quantity::unit).stream())
                .anyMatch(unit -> unit.dimension() == Dimension.MASS);
        return mass ? Optional.of(text) : Optional.empty();
    }
}
