package panade.report;

import java.util.ArrayList;
import java.util.List;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.explain.conflict.Conflict;
import panade.explain.conflict.Conflict.Member;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.plan.Outcome.Conflicted;
import panade.plan.Outcome.Undecided;
import panade.quotes.PriceComparison;

/** Words why there is no blend under a price list, or why a blend cannot be made there. */
record QuoteReasons(Brief brief, PriceComparison comparison) {
    /** One line for each list of which it is proved that it allows no blend. */
    List<String> withoutBlend() {
        var lines = new ArrayList<String>();
        for (int j = 0; j < comparison.lists().size(); j++) {
            var list = comparison.lists().get(j);
            if (comparison.best().get(j) instanceof Conflicted conflicted) {
                lines.add(list + ": no blend. " + words(conflicted));
            }
        }
        return lines;
    }

    private String words(Conflicted conflicted) {
        var lacking = comparison.pooled() instanceof Blended best
                ? lacking(best.blend(), conflicted.brief())
                : List.<String>of();
        var clash = clash(conflicted.conflict());
        return lacking.isEmpty()
                ? clash
                : clash + " Of what the cheapest blend of all lists takes it has no " + String.join(", ", lacking)
                        + ".";
    }

    /** That there is no blend is proved; that just these are in each other's way need not be. */
    private static String clash(Conflict conflict) {
        if (conflict.sets().isEmpty()) {
            return "";
        }
        var members = conflict.sets().get(0);
        var names =
                String.join(" and ", members.stream().map(QuoteReasons::words).toList());
        if (conflict.proved()) {
            return (members.size() == 1 ? "It cannot keep " : "It cannot keep together ") + names + ".";
        }
        return "By the search's word, not proved, it is " + names + " that it cannot keep"
                + (members.size() == 1 ? "." : " together.");
    }

    private static String words(Member member) {
        return "\"" + member.name() + "\" (" + member.words() + ")";
    }

    /** Names of what a blend takes and a list does not sell. */
    List<String> lacking(Blend blend, Brief list) {
        return blend.lines().stream()
                .map(line -> line.use().ingredient())
                .distinct()
                .filter(id -> !list.candidates().contains(id))
                .map(id -> brief.set().ingredient(id).name())
                .sorted()
                .toList();
    }

    /** What the first list's blend lacks under another; all it takes may be sold, but less than it takes. */
    String cannotBeMade(int list) {
        if (comparison.best().get(0) instanceof Blended first) {
            var names = lacking(first.blend(), asked(comparison.best().get(list)));
            return names.isEmpty() ? "not enough of it to be had" : "no " + String.join(", ", names);
        }
        return "";
    }

    private static Brief asked(Outcome outcome) {
        if (outcome instanceof Blended blended) {
            return blended.asked();
        }
        return outcome instanceof Conflicted conflicted ? conflicted.brief() : ((Undecided) outcome).brief();
    }
}
