package panade.label.nutrition;

/** Whose rules a label follows. */
public enum Format {
    US("21 CFR 101.9", "% Daily Value"),
    EU("Regulation (EU) 1169/2011", "% ref. intake");

    private final String law;
    private final String percent;

    Format(String law, String percent) {
        this.law = law;
        this.percent = percent;
    }

    /** Where the rules stand. */
    public String law() {
        return law;
    }

    /** What stands over the parts of a day's worth. */
    public String percent() {
        return percent;
    }
}
