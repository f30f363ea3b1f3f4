package panade.document.pantry;

import java.util.Map;
import java.util.Optional;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;
import panade.domain.pantry.Property;
import panade.domain.pantry.PropertyWords;

/**
 * The properties that values may be stated for.
 *
 * @param properties by name, INFOODS components first
 * @param complete false when the document's traits could not be read, so that an unknown name may be one of them
 */
record Traits(Map<String, Property> properties, boolean complete) {
    /** The property of that name; one that means nothing is told. */
    Optional<Property> find(Origin origin, String name, Problems problems) {
        var property = Optional.ofNullable(properties.get(name));
        if (property.isEmpty() && complete) {
            tellUnknown(origin, name, problems);
        }
        return property;
    }

    /** A word is only a hint here: values have no unit beside them, and a tagname's own may be another one. */
    private void tellUnknown(Origin origin, String name, Problems problems) {
        var what = "Nothing is called \"" + name + "\"";
        var expected = "Expected an INFOODS tagname, such as \"PROCNT\", or a trait declared under \"traits\".";
        var meant = PropertyWords.tagname(name)
                .flatMap(tagname -> Optional.ofNullable(properties.get(tagname)))
                .map(known -> "Did you mean \"" + known.id() + "\", in "
                        + known.unit().symbol() + "?")
                .or(() -> PropertyWords.advice(name));
        if (meant.isPresent()) {
            problems.add(origin, what, expected, meant.get());
        } else {
            problems.unknown(origin, what, name, properties.keySet(), expected);
        }
    }
}
