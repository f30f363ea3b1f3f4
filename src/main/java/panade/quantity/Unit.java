package panade.quantity;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A unit of measurement.
 *
 * @param symbol as people write it; empty for bare numbers
 * @param dimension what it measures
 * @param factor how many base units of the dimension one of these is. Avoirdupois factors are exact: 1 lb = 0.45359237
 *     kg (NIST SP 811, appendix B.8), 1 oz = 1/16 lb.
 */
public record Unit(String symbol, Dimension dimension, BigFraction factor) {
    /** The bare number. */
    public static final Unit NUMBER = new Unit("", Dimension.NUMBER, BigFraction.ONE);

    private static final Map<String, Unit> NAMED = named();

    // Every way to write a mass that a cook uses, in small letters; common practice, no source.
    private static final Map<String, String> WORDS = words();

    /** Per cent of the whole, the unit of shares when nobody states another. */
    public static final Unit PERCENT = of("%");

    /** Gram. */
    public static final Unit GRAM = of("g");

    /** Pound, avoirdupois. */
    public static final Unit POUND = of("lb");

    /**
     * The unit with that symbol, or with a word that cooks write for it, such as {@code lbs}, {@code Pounds} or
     * {@code KG}; micro may be written as either Unicode sign, as {@code u} or as {@code mc}.
     */
    public static Optional<Unit> find(String symbol) {
        var compact = symbol.indexOf('/') < 0 ? symbol : symbol.replace(" ", "");
        var exact = NAMED.get(plainMicro(compact));
        return exact != null
                ? Optional.of(new Unit(compact, exact.dimension(), exact.factor()))
                : Optional.ofNullable(WORDS.get(symbol.toLowerCase(Locale.ROOT)))
                        .map(NAMED::get);
    }

    /** The unit with that symbol, which must exist. */
    public static Unit of(String symbol) {
        return find(symbol).orElseThrow(() -> new IllegalArgumentException("no unit " + symbol));
    }

    /** The unit an ingredient set declares for a trait: a known one, or a new one of its own. */
    public static Unit declared(String symbol) {
        return symbol.isEmpty() ? NUMBER : find(symbol).orElseGet(() -> ofItsOwn(symbol));
    }

    /** A unit that measures like nothing else, though one of that symbol may be known. */
    public static Unit ofItsOwn(String symbol) {
        return new Unit(symbol, Dimension.DECLARED, BigFraction.ONE);
    }

    /** Every symbol that {@link #find} knows, in the order of the documentation. */
    public static Set<String> symbols() {
        return NAMED.keySet();
    }

    /** Whether a number in this unit can be stated in the other. */
    public boolean measuresLike(Unit other) {
        return dimension == other.dimension && (dimension != Dimension.DECLARED || symbol.equals(other.symbol));
    }

    /** A value given in base units, stated in this unit. */
    public BigFraction fromBase(BigFraction base) {
        return base.divide(factor);
    }

    /**
     * The unit in which a kitchen that weighs in this one keeps stock: pounds for ounces and pounds, else kilograms.
     */
    public Unit ofStock() {
        boolean avoirdupois = factor.equals(POUND.factor) || factor.equals(of("oz").factor);
        return avoirdupois ? POUND : of("kg");
    }

    private static String plainMicro(String symbol) {
        var plain = symbol.replace('\u03bc', '\u00b5');
        if (plain.startsWith("ug")) {
            return "\u00b5" + plain.substring(1);
        }
        return plain.startsWith("mcg") ? "\u00b5" + plain.substring(2) : plain;
    }

    private static Map<String, String> words() {
        var words = new HashMap<String, String>();
        List.of("lb", "lbs", "lb.", "lbs.", "pound", "pounds").forEach(word -> words.put(word, "lb"));
        List.of("oz", "oz.", "ounce", "ounces").forEach(word -> words.put(word, "oz"));
        List.of("g", "gr", "gram", "grams", "gramme", "grammes").forEach(word -> words.put(word, "g"));
        List.of("kg", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes")
                .forEach(word -> words.put(word, "kg"));
        return words;
    }

    private static Map<String, Unit> named() {
        var units = new LinkedHashMap<String, Unit>();
        add(units, Dimension.MASS, "\u00b5g", "1e-9", "mg", "1e-6", "g", "1e-3", "kg", "1", "t", "1000");
        add(units, Dimension.MASS, "oz", "0.028349523125", "lb", "0.45359237");
        add(units, Dimension.SHARE, "%", "0.01", "g/g", "1", "g/100g", "0.01", "mg/100g", "1e-5");
        add(
                units,
                Dimension.SHARE,
                "\u00b5g/100g",
                "1e-8",
                "mg/g",
                "1e-3",
                "g/kg",
                "1e-3",
                "mg/kg",
                "1e-6",
                "ppm",
                "1e-6");
        add(units, Dimension.ENERGY, "kcal/100g", "10", "kcal/kg", "1");
        return units;
    }

    private static void add(Map<String, Unit> units, Dimension dimension, String... symbolsAndFactors) {
        for (int i = 0; i < symbolsAndFactors.length; i += 2) {
            var symbol = symbolsAndFactors[i];
            units.put(symbol, new Unit(symbol, dimension, Decimal.of(symbolsAndFactors[i + 1])));
        }
    }
}
