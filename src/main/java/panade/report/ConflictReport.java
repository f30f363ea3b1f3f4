package panade.report;

import java.util.ArrayList;
import java.util.List;
import panade.plan.Outcome.Conflicted;
import panade.report.Block.Paragraph;

/** Words the proof that no blend meets a brief. */
public final class ConflictReport {
    private ConflictReport() {}

    /** The report on a brief that cannot be met. */
    public static ReportDocument of(Conflicted outcome) {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph("No blend can meet every bound of this brief with the offers at hand. Proved in exact"
                + " fractions (" + outcome.proof().engine() + "): the bounds contradict each other."));
        blocks.add(new Paragraph("Loosen a bound, allow an ingredient, or add an offer, and run it again."));
        return new ReportDocument(outcome.brief().title(), List.copyOf(blocks));
    }
}
