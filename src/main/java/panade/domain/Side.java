package panade.domain;

/** Which of a bound's numbers is meant. */
public enum Side {
    /** The floor. */
    MIN,
    /** The ceiling. */
    MAX,
    /** Both, where floor and ceiling are the same amount and can only move together. */
    FIXED
}
