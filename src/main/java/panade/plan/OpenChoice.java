package panade.plan;

/** Neither a blend was found among the choices that rules leave, nor was it proved that there is none. */
final class OpenChoice extends ArithmeticException {
    private static final long serialVersionUID = 1L;

    OpenChoice(int looked) {
        super("the rules leave so many choices that after " + looked
                + " of them no blend was found, nor all were ruled out");
    }
}
