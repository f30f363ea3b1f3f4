package panade.cli.interview;

import java.util.List;

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

    /** Those that are asked for; what a short beginning can do without is left out. */
    static List<Component> asked(boolean full) {
        return full ? List.of(values()) : List.of(PROCNT, FAT, NA);
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
