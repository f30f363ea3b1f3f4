package panade.crosscheck;

/** An ingredient in a stage, by their names in the documents. */
record RawUse(String ingredient, String stage) {}
