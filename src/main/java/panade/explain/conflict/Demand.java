package panade.explain.conflict;

import panade.domain.Rule;

/** Something a brief asks for that can be given up by itself. */
sealed interface Demand {
    /** A rule. */
    record OfRule(Rule rule) implements Demand {}

    /** One side of a bound, or the most that can be had of an offer: a row of the brief's model. */
    record OfRow(int row) implements Demand {}
}
