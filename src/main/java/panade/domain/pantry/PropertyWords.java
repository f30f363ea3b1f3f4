package panade.domain.pantry;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Everyday words for food components, and the INFOODS tagnames they stand for. */
public final class PropertyWords {
    /** Words that can mean one component only; common practice, no source. */
    private static final Map<String, String> MEANT = meant();

    /**
     * Words that would have to be guessed at. A gram of sodium chloride is 0.393 g of sodium, by the standard atomic
     * weights 22.990 and 35.45 (IUPAC 2021).
     */
    private static final Map<String, String> UNCLEAR = unclear();

    private PropertyWords() {}

    /** The tagname that a word stands for beyond doubt, in any case of its letters. */
    public static Optional<String> tagname(String word) {
        return Optional.ofNullable(MEANT.get(word.strip().toLowerCase(Locale.ROOT)));
    }

    /** What to write instead of a word that stands for something else than a component, or for several. */
    public static Optional<String> advice(String word) {
        return Optional.ofNullable(UNCLEAR.get(word.strip().toLowerCase(Locale.ROOT)));
    }

    private static Map<String, String> meant() {
        var words = new HashMap<String, String>();
        put(words, "PROCNT", "protein", "proteins");
        put(words, "FAT", "fat", "fats", "total fat");
        put(words, "FASAT", "saturates", "saturated fat", "saturated fats", "sat fat");
        put(words, "FATRN", "trans fat", "trans fats");
        put(words, "WATER", "water", "moisture");
        put(words, "NA", "sodium");
        put(words, "K", "potassium");
        put(words, "CA", "calcium");
        put(words, "FE", "iron");
        put(words, "FIBTG", "fibre", "fiber", "dietary fibre", "dietary fiber");
        put(words, "SUGAR", "sugar", "sugars", "total sugars");
        put(words, "SUGAD", "added sugar", "added sugars");
        put(words, "ENERC", "energy", "calories", "kcal");
        put(words, "CHOLE", "cholesterol");
        put(words, "VITD", "vitamin d");
        put(words, "STARCH", "starch");
        put(words, "LYS", "lysine");
        put(words, "ASH", "ash");
        return words;
    }

    private static Map<String, String> unclear() {
        var words = new HashMap<String, String>();
        put(
                words,
                "Salt is measured as sodium: write \"NA\", of which 1 g of salt holds 393 mg.",
                "salt",
                "table salt",
                "sodium chloride");
        put(
                words,
                "Write \"CHOAVL\" for carbohydrate without fibre, as labels in the EU have it, or \"CHOCDF\" for all of"
                        + " it with fibre, as labels in the US have it.",
                "carbohydrate",
                "carbohydrates",
                "carbs");
        return words;
    }

    private static void put(Map<String, String> words, String meaning, String... all) {
        List.of(all).forEach(word -> words.put(word, meaning));
    }
}
