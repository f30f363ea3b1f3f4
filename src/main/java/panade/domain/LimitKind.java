package panade.domain;

/** Who asks for a limit, and so what can be done about it. */
public enum LimitKind {
    /** A bound of the brief. */
    BRIEF,
    /** A stage's share of the batch, or a bound inside a stage. */
    STAGE,
    /** A ceiling on use that the ingredient set states. */
    CEILING,
    /** The most of an offer that can be had. */
    AVAILABILITY,
    /** The least of an ingredient that a rule asks for where it is used. */
    RULE,
    /** The order of names on a printed label. */
    LABEL,
    /** How far a lever was tried that a response learned from trials follows. */
    TRIED,
    /** No limit, but the cooked weight that cost is counted by. */
    COST_BASIS;

    /** Whether no brief wrote it: a ceiling on use from the set, or what a supplier has. */
    public boolean isOfThePantry() {
        return this == CEILING || this == AVAILABILITY;
    }
}
