package panade.label.nutrition;

import java.util.ArrayList;
import java.util.List;
import panade.quantity.Decimal;

/**
 * The lines of a label in the United States, in the order of 21 CFR 101.9(c) and (d), with the Daily Values of
 * (c)(8)(iv) and (c)(9) as of 2016.
 */
public final class UsNutrients {
    static final Content CARBOHYDRATE =
            Content.firstOf(Content.sum("CHOCDF", "1"), Content.sum("CHOAVL", "1", "FIBTG", "1"));

    /** Tagname, name, unit, Daily Value: vitamins and minerals that have to be there. */
    private static final String[][] VITAMINS = {
        {"VITD", "Vitamin D", "mcg", "20"},
        {"CA", "Calcium", "mg", "1300"},
        {"FE", "Iron", "mg", "18"},
        {"K", "Potassium", "mg", "4700"},
    };

    /** The same for those that may be there; the weight turns the tagname's unit into the label's. */
    private static final String[][] MORE = {
        {"VITA", "Vitamin A", "mcg", "900", "1"},
        {"VITC", "Vitamin C", "mg", "90", "1"},
        {"VITE", "Vitamin E", "mg", "15", "1"},
        {"VITK", "Vitamin K", "mcg", "120", "1"},
        {"THIA", "Thiamin", "mg", "1.2", "1"},
        {"RIBF", "Riboflavin", "mg", "1.3", "1"},
        {"NIAEQ", "Niacin", "mg", "16", "1"},
        {"VITB6A", "Vitamin B6", "mg", "1.7", "1"},
        {"FOLDFE", "Folate", "mcg DFE", "400", "1"},
        {"VITB12", "Vitamin B12", "mcg", "2.4", "1"},
        {"BIOT", "Biotin", "mcg", "30", "1"},
        {"PANTAC", "Pantothenic acid", "mg", "5", "1"},
        {"P", "Phosphorus", "mg", "1250", "1"},
        {"ID", "Iodine", "mcg", "150", "1"},
        {"MG", "Magnesium", "mg", "420", "1"},
        {"ZN", "Zinc", "mg", "11", "1"},
        {"SE", "Selenium", "mcg", "55", "1"},
        {"CU", "Copper", "mg", "0.9", "1"},
        {"MN", "Manganese", "mg", "2.3", "0.001"},
        {"CLD", "Chloride", "mg", "2300", "1"},
        {"CHOLN", "Choline", "mg", "550", "1"},
    };

    private UsNutrients() {}

    /** All lines, energy first. */
    public static List<Nutrient> with(Energy energy) {
        var lines = new ArrayList<Nutrient>();
        lines.add(line("ENERC", "Calories", 0, "", energy, UsRounding.CALORIES));
        lines.add(macro("FAT", "Total Fat", 0, Content.of("FAT"), UsRounding.FAT, "78"));
        lines.add(macro("FASAT", "Saturated Fat", 1, Content.of("FASAT"), UsRounding.FAT, "20"));
        lines.add(line("FATRN", "Trans Fat", 1, "g", Content.of("FATRN"), UsRounding.FAT));
        lines.add(line("CHOLE", "Cholesterol", 0, "mg", Content.of("CHOLE"), UsRounding.CHOLESTEROL)
                .daily("300", UsRounding.PERCENT));
        lines.add(line("NA", "Sodium", 0, "mg", Content.of("NA"), UsRounding.SODIUM)
                .daily("2300", UsRounding.PERCENT));
        lines.add(macro("CHOCDF", "Total Carbohydrate", 0, CARBOHYDRATE, UsRounding.CARBOHYDRATE, "275"));
        lines.add(macro("FIBTG", "Dietary Fiber", 1, new CountedFibre(), UsRounding.CARBOHYDRATE, "28"));
        lines.add(line("SUGAR", "Total Sugars", 1, "g", Content.of("SUGAR"), UsRounding.CARBOHYDRATE));
        lines.add(macro("SUGAD", "Added Sugars", 2, Content.of("SUGAD"), UsRounding.CARBOHYDRATE, "50"));
        lines.add(macro("PROCNT", "Protein", 0, Content.of("PROCNT"), UsRounding.CARBOHYDRATE, "50"));
        for (var each : VITAMINS) {
            lines.add(vitamin(each[0], each[1], each[2], each[3], "1", true));
        }
        for (var each : MORE) {
            lines.add(vitamin(each[0], each[1], each[2], each[3], each[4], false));
        }
        return List.copyOf(lines);
    }

    private static Nutrient line(
            String id, String name, int level, String unit, Content content, RoundingRule rounding) {
        return new Nutrient(id, name, level, unit, content, rounding::print, null, UsRounding.PERCENT, true);
    }

    private static Nutrient macro(
            String id, String name, int level, Content content, RoundingRule rounding, String dailyValue) {
        return line(id, name, level, "g", content, rounding).daily(dailyValue, UsRounding.PERCENT);
    }

    private static Nutrient vitamin(
            String id, String name, String unit, String dailyValue, String weight, boolean always) {
        var content = Content.of(Content.sum(id, weight));
        var worth = Decimal.of(dailyValue);
        return new Nutrient(
                id,
                name,
                0,
                unit,
                content,
                UsRounding.vitamin(worth)::print,
                worth,
                UsRounding.VITAMIN_PERCENT,
                always);
    }
}
