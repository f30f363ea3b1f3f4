package panade.document;

import java.util.Map;
import java.util.Optional;
import panade.domain.Origin;
import panade.domain.Property;

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
            problems.unknown(
                    origin,
                    "Nothing is called \"" + name + "\"",
                    name,
                    properties.keySet(),
                    "Expected an INFOODS tagname, such as \"PROCNT\", or a trait declared under \"traits\".");
        }
        return property;
    }
}
