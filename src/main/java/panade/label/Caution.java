package panade.label;

/**
 * Something to mind.
 *
 * @param text what
 * @param source who says so
 */
public record Caution(String text, String source) {}
