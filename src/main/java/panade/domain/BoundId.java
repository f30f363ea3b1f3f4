package panade.domain;

import panade.domain.origin.Origin;

/**
 * Which bound is meant, whatever its limits: two bounds that read alike are two, and one stays itself when its numbers
 * are changed.
 *
 * @param file the document that states it
 * @param path a JSON Pointer into that document
 * @param option which of several bounds that one place states, as a rule on each of some ingredients does; empty where
 *     it states one
 */
public record BoundId(String file, String path, String option) {
    /** The bound of a kind that is stated there; its name counts only where a rule states several. */
    public static BoundId of(LimitKind kind, Origin origin, String path, String name) {
        return new BoundId(origin.file(), path, kind == LimitKind.RULE ? name : "");
    }
}
