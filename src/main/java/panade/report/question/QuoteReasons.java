package panade.report.question;

import java.util.ArrayList;
import java.util.List;
import panade.result.BlendResult;
import panade.result.NoBlendResult;
import panade.result.NoBlendResult.Member;
import panade.result.QuotesResult;

/** Words why there is no blend under a price list, or why a blend cannot be made there. */
record QuoteReasons(QuotesResult result) {
    /** One line for each list of which it is proved that it allows no blend. */
    List<String> withoutBlend() {
        var lines = new ArrayList<String>();
        for (int j = 0; j < result.lists().size(); j++) {
            if (result.best().get(j) instanceof NoBlendResult none) {
                var lacking = result.lacking().get(j).ofPooled();
                lines.add(result.lists().get(j) + ": no blend. " + clash(none)
                        + (lacking.isEmpty()
                                ? ""
                                : " Of what the cheapest blend of all lists takes it has no "
                                        + String.join(", ", lacking) + "."));
            }
        }
        return lines;
    }

    /** That there is no blend is proved; that just these are in each other's way need not be. */
    private static String clash(NoBlendResult none) {
        if (none.members().isEmpty()) {
            return "";
        }
        var members = none.members().get(0);
        var names =
                String.join(" and ", members.stream().map(QuoteReasons::words).toList());
        if (none.conflictProved()) {
            return (members.size() == 1 ? "It cannot keep " : "It cannot keep together ") + names + ".";
        }
        return "By the search's word, not proved, it is " + names + " that it cannot keep"
                + (members.size() == 1 ? "." : " together.");
    }

    private static String words(Member member) {
        return "\"" + member.name() + "\" (" + member.words() + ")";
    }

    /** What the first list's blend lacks under another; all it takes may be sold, but less than it takes. */
    String cannotBeMade(int list) {
        if (!(result.best().get(0) instanceof BlendResult)) {
            return "";
        }
        var names = result.lacking().get(list).ofFirst();
        return names.isEmpty() ? "not enough of it to be had" : "no " + String.join(", ", names);
    }
}
