package panade.cli.interview;

/** A component that is asked for, and how its bound is written; named by its tagname. */
enum Component {
    WATER("water", "g", "%"),
    PROCNT("protein", "g", "%"),
    FAT("fat", "g", "%"),
    NA("sodium", "mg", "mg/100g");

    private final String words;
    private final String unit;
    private final String share;

    Component(String words, String unit, String share) {
        this.words = words;
        this.unit = unit;
        this.share = share;
    }

    String words() {
        return words;
    }

    String unit() {
        return unit;
    }

    /** The unit of a bound on it. */
    String share() {
        return share;
    }
}
