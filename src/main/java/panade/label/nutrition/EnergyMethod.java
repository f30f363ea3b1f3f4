package panade.label.nutrition;

/** Ways of counting calories that 21 CFR 101.9(c)(1)(i) allows. */
public enum EnergyMethod {
    /** 4, 4 and 9 kcal per gram of protein, total carbohydrate and fat: (B). */
    GENERAL("4, 4 and 9 kcal per g of protein, total carbohydrate and fat, 21 CFR 101.9(c)(1)(i)(B)"),
    /** The same without fibre that does not dissolve, and 2 for fibre that does: (C). */
    DIGESTIBLE("4, 4 and 9 kcal per g of protein, carbohydrate without fibre and fat, 2 for soluble fibre,"
            + " 21 CFR 101.9(c)(1)(i)(C)"),
    /** An ingredient's own factors where the set gives them: (A). */
    SPECIFIC("each ingredient's own factors where the set gives them, else 4, 4 and 9, 21 CFR 101.9(c)(1)(i)(A)");

    private final String words;

    EnergyMethod(String words) {
        this.words = words;
    }

    /** How it counts, for a note under the panel. */
    public String words() {
        return words;
    }

    public Energy energy() {
        return switch (this) {
            case GENERAL -> Energy.US_GENERAL;
            case DIGESTIBLE -> Energy.US_DIGESTIBLE;
            case SPECIFIC -> Energy.US_SPECIFIC;
        };
    }
}
