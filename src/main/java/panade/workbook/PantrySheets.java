package panade.workbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.pantry.Ingredient;
import panade.domain.pantry.IngredientSet;
import panade.domain.pantry.Property;
import panade.domain.purchase.Offer;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.quantity.Unit;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Cell.Look;
import panade.sheet.Sheet;
import panade.sheet.SheetDraft;
import panade.sheet.WordList;

/** A pantry and its prices as sheets that can be taken in again without losing anything. */
public final class PantrySheets {
    private static final int DIGITS = 15;
    private static final List<String> WEIGHTS = List.of("kg", "lb", "oz", "g", "t");
    private static final List<String> ABOUT = List.of(
            "id",
            "name",
            "label",
            "kinds",
            "allergens",
            "maxUse",
            "usable",
            "variantOf",
            "others",
            "note",
            "madeOf",
            "energyFactors",
            "digestibility",
            "labelUs",
            "labelEu",
            "additiveClass",
            "additiveNumber",
            "fibre",
            "colours");

    private PantrySheets() {}

    /** Ingredients: a row each, a column for whatever one of them states. */
    public static Sheet ingredients(IngredientSet set) {
        var sheet = new SheetDraft("Ingredients", 26, 34, 26, 16, 16);
        var properties = stated(set, false);
        var spreads = stated(set, true);
        var heads = new ArrayList<>(ABOUT);
        properties.forEach(id -> heads.add(heading(set.property(id))));
        spreads.forEach(id -> heads.add("spread " + heading(set.property(id))));
        sheet.head(heads);
        set.ingredients().values().forEach(ingredient -> {
            var cells = new ArrayList<>(about(ingredient));
            properties.forEach(id -> cells.add(number(ingredient.values().get(id))));
            spreads.forEach(id -> cells.add(number(ingredient.spread().get(id))));
            sheet.add(cells);
        });
        return sheet.finish();
    }

    private static List<String> stated(IngredientSet set, boolean spread) {
        return set.properties().keySet().stream()
                .filter(id -> set.ingredients().values().stream()
                        .anyMatch(each -> (spread ? each.spread() : each.values()).containsKey(id)))
                .toList();
    }

    private static String heading(Property property) {
        var unit = property.unit().symbol();
        return unit.isEmpty() ? property.id() : property.id() + " (" + unit + ")";
    }

    private static List<Cell> about(Ingredient ingredient) {
        var maxUse = ingredient.maxUse();
        var usable = ingredient.usable();
        var variantOf = ingredient.variantOf();
        var marks = ingredient.labelling().marks();
        var additive = marks.additive();
        return Stream.of(
                        ingredient.id(),
                        ingredient.name(),
                        ingredient.label(),
                        WordList.written(ingredient.kinds()),
                        words(ingredient.allergens()),
                        maxUse == null ? "" : maxUse.text(),
                        usable.equals(BigFraction.ONE) ? "" : exactly(usable.multiply(100)) + " %",
                        variantOf == null ? "" : variantOf,
                        ingredient.othersAreZero() ? "0" : "",
                        ingredient.note(),
                        words(ingredient.labelling().madeOf()),
                        pairs(ingredient.labelling().energyFactors(), ""),
                        pairs(percent(ingredient.labelling().digestibility()), "%"),
                        marks.names().getOrDefault("us", ""),
                        marks.names().getOrDefault("eu", ""),
                        additive == null ? "" : additive.category(),
                        additive == null ? "" : additive.number(),
                        Objects.requireNonNullElse(marks.fibre(), ""),
                        marks.colours() ? "yes" : "")
                .map(Cell::text)
                .toList();
    }

    private static String pairs(Map<String, BigFraction> figures, String unit) {
        return WordList.written(figures.keySet().stream()
                .sorted()
                .map(id -> id + " " + exactly(figures.getOrDefault(id, BigFraction.ZERO)) + unit)
                .toList());
    }

    private static Map<String, BigFraction> percent(Map<String, BigFraction> shares) {
        var percent = new LinkedHashMap<String, BigFraction>();
        shares.forEach((id, share) -> percent.put(id, share.multiply(100)));
        return percent;
    }

    /** Nothing where it is not known, and the word for none where there is none. */
    private static String words(@Nullable Collection<String> words) {
        return words == null ? "" : words.isEmpty() ? WordList.NONE : WordList.written(words);
    }

    /** A number to be changed; as text where a spreadsheet would not keep all of its digits. */
    private static Cell number(@Nullable BigFraction value) {
        if (value == null) {
            return Cell.BLANK;
        }
        return isDecimal(value) ? Cell.input(value, Form.PLAIN) : new Cell.Text(exactly(value), Look.INPUT);
    }

    /** Whether a spreadsheet keeps all of its digits. */
    private static boolean isDecimal(BigFraction value) {
        return Decimal.of(Decimal.significant(value, DIGITS)).compareTo(value) == 0;
    }

    /** All digits of a decimal. */
    private static String exactly(BigFraction value) {
        int digits = DIGITS;
        while (Decimal.of(Decimal.significant(value, digits)).compareTo(value) != 0) {
            digits *= 2;
        }
        return Decimal.significant(value, digits).toPlainString();
    }

    /** What the columns mean: the set's own traits and whatever is stated, and what the set assumes. */
    public static Sheet traits(IngredientSet set) {
        var sheet = new SheetDraft("Traits", 18, 40, 12, 12, 12, 40);
        sheet.head("trait", "title", "unit", "absent", "assume", "sum");
        var stated = stated(set, false);
        set.properties().values().stream()
                .filter(property -> isDeclared(property)
                        || set.assume().containsKey(property.id())
                        || stated.contains(property.id()))
                .forEach(property -> sheet.add(
                        Cell.text(property.id()),
                        Cell.text(property.title()),
                        Cell.text(property.unit().symbol()),
                        number(property.absent()),
                        number(set.assume().get(property.id())),
                        Cell.text(sum(property.sum()))));
        sheet.add(Cell.BLANK);
        sheet.add(Cell.text("set title"), Cell.text(set.title()));
        sheet.add(Cell.text("set source"), Cell.text(set.source()));
        return sheet.finish();
    }

    private static boolean isDeclared(Property property) {
        return !property.component() || property.absent() != null;
    }

    private static String sum(Map<String, BigFraction> sum) {
        var parts = new LinkedHashMap<>(sum);
        return WordList.written(parts.entrySet().stream()
                .map(part -> exactly(part.getValue()) + " x " + part.getKey())
                .toList());
    }

    /** Offers, in the columns of a price list. */
    public static Sheet prices(Collection<Offer> offers, String currency) {
        var sheet = new SheetDraft("Prices", 26, 26, 12, 10, 10, 10, 10, 10, 30);
        sheet.head("ingredient", "supplier", "price", "per", "pack", "minimum", "available", "currency", "note");
        offers.forEach(offer -> {
            var price = Price.of(offer);
            sheet.add(
                    Cell.text(offer.ingredient()),
                    Cell.text(offer.supplier()),
                    number(price.money()),
                    Cell.text(price.per()),
                    Cell.text(text(offer.pack())),
                    Cell.text(text(offer.minimum())),
                    Cell.text(text(offer.available())),
                    Cell.text(currency),
                    Cell.text(offer.note()));
        });
        return sheet.finish();
    }

    private static String text(@Nullable Quantity quantity) {
        return quantity == null ? "" : quantity.text();
    }

    /** A price as a decimal for a weight. */
    private record Price(BigFraction money, String per) {
        /** For a pack or a weight that makes the money a decimal; else for as many kilograms as make it whole. */
        static Price of(Offer offer) {
            var perKg = offer.pricePerKg();
            var kilograms = perKg.getDenominator().abs();
            return weights(offer.pack())
                    .map(weight -> new Price(perKg.multiply(weight.base()), weight.text()))
                    .filter(price -> isDecimal(price.money()))
                    .findFirst()
                    .orElseGet(() -> new Price(perKg.multiply(kilograms), kilograms + " kg"));
        }

        private static Stream<Quantity> weights(@Nullable Quantity pack) {
            var usual = WEIGHTS.stream().map(symbol -> Quantity.of(BigFraction.ONE, Unit.of(symbol), symbol));
            return pack != null && pack.base().signum() > 0 ? Stream.concat(Stream.of(pack), usual) : usual;
        }
    }
}
