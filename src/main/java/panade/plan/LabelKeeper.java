package panade.plan;

import java.util.function.Function;
import panade.domain.Brief;
import panade.domain.LabelOrder;
import panade.label.Statement;
import panade.model.Unproved;
import panade.plan.Outcome.Blended;

/** Finds out which label a brief is to keep where that is the one it has as it is written. */
final class LabelKeeper {
    private final Function<Brief, Outcome> answer;

    LabelKeeper(Function<Brief, Outcome> answer) {
        this.answer = answer;
    }

    /**
     * The brief with bounds that keep its label; the same where it has none to keep. Where the brief as written has no
     * blend there is no label, and that brief is the answer, to be told why.
     */
    Brief settled(Brief brief) {
        var label = brief.practice().sameLabel();
        if (label == null || label.isSettled()) {
            return brief;
        }
        var written = LabelOrder.free(label.written() == null ? brief : label.written());
        var told = answer.apply(written);
        if (told instanceof Outcome.Undecided open) {
            throw new Unproved("which label the brief as written has is not known: " + open.reason());
        }
        return told instanceof Blended blended
                ? LabelOrder.keep(brief, Statement.names(blended.brief(), blended.blend()), label.origin())
                : written;
    }
}
