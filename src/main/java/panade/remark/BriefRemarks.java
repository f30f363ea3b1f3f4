package panade.remark;

import java.util.ArrayList;
import java.util.List;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.domain.Brief;
import panade.domain.origin.Remark;
import panade.plan.Planner;

/** Looks a whole brief over for what may not be meant. */
public final class BriefRemarks {
    private BriefRemarks() {}

    /** The brief with every remark on it, those that were made while it was read first. */
    public static Brief on(Planner planner, Brief brief) {
        var compiled = BriefCompiler.compile(brief);
        var remarks = new ArrayList<>(AmountRemarks.of(brief));
        remarks.addAll(solved(planner, brief, compiled));
        remarks.addAll(NoteRemarks.of(brief));
        return brief.remarking(remarks);
    }

    private static List<Remark> solved(Planner planner, Brief brief, CompiledBrief compiled) {
        var remarks = new ArrayList<Remark>();
        var range = new Range(planner, compiled);
        remarks.addAll(new MeanRemarks(brief, compiled, range).all());
        remarks.addAll(new IdleRemarks(brief, compiled).all());
        remarks.addAll(WetRemarks.of(planner, brief));
        return remarks;
    }
}
