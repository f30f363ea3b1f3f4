package panade.intake.table;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the columns of somebody else's table are in ours.
 *
 * @param names by heading as it stands in the table: one of our columns, or a property, with its unit behind it in
 *     brackets where the table uses another one
 */
public record Columns(Map<String, String> names) {
    /** Every column is called as it is with us. */
    public static final Columns OURS = new Columns(Map.of());

    public Columns {
        names = Map.copyOf(names);
    }

    /**
     * Reads entries such as {@code Protein=PROCNT} or {@code Salt g=NACL (g/100g)}; empty when one is not like that.
     */
    public static Optional<Columns> of(List<String> entries) {
        var names = new LinkedHashMap<String, String>();
        for (var entry : entries) {
            int sign = entry.lastIndexOf('=');
            if (sign < 1 || entry.substring(sign + 1).isBlank()) {
                return Optional.empty();
            }
            names.put(
                    entry.substring(0, sign).strip(), entry.substring(sign + 1).strip());
        }
        return Optional.of(new Columns(names));
    }

    String renamed(String heading) {
        return names.getOrDefault(heading, heading);
    }
}
