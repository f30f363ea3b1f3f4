package panade.cli.interview;

/** What can be added to a pantry that is there. */
public enum Addition {
    PRODUCT,
    INGREDIENT
}
