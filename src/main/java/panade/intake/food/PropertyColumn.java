package panade.intake.food;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.pantry.Property;
import panade.quantity.Unit;

/**
 * A column of values.
 *
 * @param spread whether they are standard deviations
 * @param factor what a number in the table's unit is in the property's own
 */
record PropertyColumn(Property property, boolean spread, BigFraction factor) {
    private static final String SPREAD = "spread ";
    private static final Pattern WITH_UNIT = Pattern.compile("(.*\\S)\\s*\\(([^()]+)\\)");

    /** A heading that names a property, alone or with a unit of the same sort behind it in brackets. */
    static Optional<PropertyColumn> of(String heading, Map<String, Property> properties) {
        boolean spread = heading.startsWith(SPREAD);
        var name = spread ? heading.substring(SPREAD.length()).strip() : heading;
        var plain = Optional.ofNullable(properties.get(name));
        if (plain.isPresent()) {
            return plain.map(property -> new PropertyColumn(property, spread, BigFraction.ONE));
        }
        var match = WITH_UNIT.matcher(name);
        return match.matches()
                ? Optional.ofNullable(properties.get(match.group(1)))
                        .flatMap(property -> inUnit(
                                property, spread, Unit.declared(match.group(2).strip())))
                : Optional.empty();
    }

    private static Optional<PropertyColumn> inUnit(Property property, boolean spread, Unit unit) {
        return unit.measuresLike(property.unit())
                ? Optional.of(new PropertyColumn(
                        property, spread, unit.factor().divide(property.unit().factor())))
                : Optional.empty();
    }
}
