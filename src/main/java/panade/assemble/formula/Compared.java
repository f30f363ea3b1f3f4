package panade.assemble.formula;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.nudge.Start;
import panade.plan.Outcome;
import panade.result.formula.CompareResult.Kind;

/**
 * One of the things that are laid side by side.
 *
 * @param title what it is called
 * @param file that names it
 * @param kind what it is
 * @param brief that it is measured against
 * @param blend what goes in; null where there is none
 * @param unsold ids of what it holds and no list sells
 * @param without why there is no blend; null where there is one
 */
public record Compared(
        String title,
        String file,
        Kind kind,
        Brief brief,
        @Nullable Blend blend,
        Set<String> unsold,
        @Nullable String without) {
    public Compared {
        unsold = Set.copyOf(unsold);
    }

    /** A formula as it is made. */
    public static Compared formula(String title, String file, Start start) {
        return new Compared(title, file, Kind.FORMULA, start.brief(), start.blend(), start.unsold(), null);
    }

    /** The cheapest blend of a brief, or that there is none. */
    public static Compared cheapest(String file, Brief brief, Outcome outcome) {
        return new Compared(
                brief.title(),
                file,
                Kind.CHEAPEST,
                brief,
                outcome instanceof Outcome.Blended found ? found.blend() : null,
                Set.of(),
                outcome.fold(
                        found -> null,
                        none -> "no blend keeps every bound and rule of the brief",
                        open -> open.reason()));
    }
}
