package panade.document.pantry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;
import panade.quantity.Decimal;

/** Remarks on what an ingredient is said to hold where chemistry makes it unlikely. */
record CompositionRemarks(ObjectNode node, Map<String, BigFraction> values, Problems problems) {
    /**
     * Sodium in sodium chloride, in mg per g: standard atomic weights 22.990 and 35.45 (IUPAC 2021), 22.990 / 58.44.
     */
    private static final BigFraction SODIUM_IN_SALT = Decimal.of("393.4");

    /** Sodium in 100 g of table salt, in mg, with a little for other salts beside it. */
    private static final BigFraction SODIUM_OF_SALT = BigFraction.of(39_500);

    /** Sodium and potassium together below which nothing is a salt to cook with, in mg; common practice, no source. */
    private static final BigFraction LEAST_METAL = BigFraction.of(20_000);

    /** Food in 100 g from which on something called salt is salted food, in g; common practice, no source. */
    private static final BigFraction FOOD = BigFraction.of(30);

    private static final String OPEN = "is not known, at least ";

    private static final int DIGITS = 6;

    /** An amount below which a gram more or less of rounding explains it. */
    private static final BigFraction ROUNDING = BigFraction.ONE;

    /** What is called salt and holds next to nothing but minerals, yet not the sodium or potassium of a salt. */
    void checkSalt() {
        boolean mineral =
                sum("WATER", "PROCNT", "FAT", "CHOCDF", "CHOAVL", "FIBTG").compareTo(FOOD) < 0;
        var metals = value("NA").add(value("K"));
        boolean little = metals.compareTo(LEAST_METAL) < 0;
        boolean much = value("NA").compareTo(SODIUM_OF_SALT) > 0;
        if (mineral && (little || much)) {
            problems.remark(
                    origin("NA"),
                    "This is called salt and holds " + text(value("NA")) + " mg of sodium in 100 g."
                            + " Table salt holds about 39,300 mg; NA is in mg, not in g."
                            + " Write \"NA\": 39300, or the potassium (\"K\") if that is what it is.");
        }
    }

    /** All the sodium that is in the sodium chloride. */
    void checkSodium() {
        var salt = values.get("NACL");
        var sodium = values.get("NA");
        if (salt == null || sodium == null) {
            return;
        }
        // mg of each
        var least = salt.multiply(SODIUM_IN_SALT).divide(BigFraction.of(1000));
        if (least.subtract(sodium).compareTo(ROUNDING) > 0) {
            problems.remark(
                    origin("NA"),
                    "NACL of " + text(salt) + " mg holds " + text(least) + " mg of sodium, and NA says " + text(sodium)
                            + " mg. NA counts in bounds and on the label: write all the sodium there.");
        }
    }

    /** Components that cannot be 0, though {@code "others": 0} would have it so: they follow, or are not known. */
    void checkLeftOpen() {
        var taken = new ArrayList<String>();
        if (values.containsKey("CHOCDF")) {
            add(taken, "CHOAVL", value("CHOCDF").subtract(value("FIBTG")), "counts as ", "from CHOCDF less FIBTG");
        } else {
            add(taken, "CHOAVL", value("SUGAR"), OPEN, "by SUGAR");
        }
        add(taken, "FAT", sum("FASAT", "FAMS", "FAPU", "FATRN"), OPEN, "by its fatty acids");
        add(taken, "SUGAR", value("SUGAD"), OPEN, "by SUGAD");
        add(taken, "NA", value("NACL").multiply(SODIUM_IN_SALT).divide(BigFraction.of(1000)), OPEN, "by NACL");
        if (!taken.isEmpty()) {
            problems.remark(
                    node.origin(),
                    "\"others\": 0 cannot make 0 what other values show to be more: " + String.join("; ", taken)
                            + ". Write it out.");
        }
    }

    private void add(List<String> taken, String component, BigFraction follows, String how, String from) {
        boolean stated = values.containsKey(component);
        if (!stated && follows.signum() > 0) {
            taken.add(component + " " + how + text(follows) + ", " + from);
        }
    }

    private BigFraction sum(String... components) {
        return List.of(components).stream().map(this::value).reduce(BigFraction.ZERO, BigFraction::add);
    }

    private BigFraction value(String component) {
        return values.getOrDefault(component, BigFraction.ZERO);
    }

    private Origin origin(String component) {
        return node.field(component)
                .map(field -> Objects.requireNonNull(field.value()).origin())
                .orElse(node.origin());
    }

    private static String text(BigFraction value) {
        return Decimal.significant(value, DIGITS).toPlainString();
    }
}
