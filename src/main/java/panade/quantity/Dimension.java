package panade.quantity;

/** What a unit measures; each dimension has one base unit in which values are kept. */
public enum Dimension {
    /** Base: kilogram. */
    MASS("a weight"),
    /** Base: kilogram per kilogram. */
    SHARE("a share of the whole"),
    /** Base: kilocalorie per kilogram. */
    ENERGY("energy per weight"),
    /** A bare number: scores, and ratios of two masses. */
    NUMBER("a bare number"),
    /** A unit that an ingredient set declares for a trait of its own; base: that unit. */
    DECLARED("a declared unit");

    private final String words;

    Dimension(String words) {
        this.words = words;
    }

    /** The dimension as a phrase with its article, for messages. */
    public String words() {
        return words;
    }
}
