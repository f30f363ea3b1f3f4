package panade.domain;

/** An ingredient in a stage: one place where something is weighed in. */
public record Use(String ingredient, String stage) {}
