package panade.intake.table;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Makes ids of names. */
public final class Slug {
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{N}]+");

    private Slug() {}

    /** The name in small letters with hyphens between its words, such as {@code soy-flour-defatted}. */
    public static String of(String name) {
        var plain =
                ACCENTS.matcher(Normalizer.normalize(name, Normalizer.Form.NFD)).replaceAll("");
        var hyphened = OTHER.matcher(plain.toLowerCase(Locale.ROOT)).replaceAll("-");
        return hyphened.replaceAll("^-|-$", "");
    }
}
