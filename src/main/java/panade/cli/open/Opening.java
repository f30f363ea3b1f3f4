package panade.cli.open;

import java.nio.file.Path;
import java.util.List;
import panade.assemble.BlendResults;
import panade.assemble.BriefResults;
import panade.assemble.RemarkLines;
import panade.cost.OptionalSections;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.page.open.Controls;
import panade.page.open.OpenPage;
import panade.page.open.OpenViews;
import panade.plan.Planner;
import panade.remark.BriefRemarks;
import panade.result.BriefResult;
import panade.whatif.ChangedBrief;
import panade.whatif.Changes;
import panade.whatif.SavedBrief;

/**
 * A brief as its documents stated it when the page was loaded, with what came of it.
 *
 * @param version of the documents
 */
record Opening(
        Planner planner, Version version, Controls controls, ChangedBrief changed, OpenViews views, Brief start) {

    /** Reads the documents and solves them, or tells what is wrong with them. */
    static Reading<Opening> read(Planner planner, Path file, Overrides overrides) {
        var reading = Documents.readBrief(file, overrides);
        return reading instanceof Reading.Accepted<Brief> accepted
                ? new Reading.Accepted<>(of(planner, file, overrides, accepted.value()))
                : new Reading.Rejected<>(((Reading.Rejected<Brief>) reading).problems());
    }

    private static Opening of(Planner planner, Path file, Overrides overrides, Brief start) {
        var version = Version.of(start);
        var controls = new Controls(start);
        var remarks = RemarkLines.of(BriefRemarks.on(planner, start).remarks());
        return new Opening(
                planner,
                version,
                controls,
                new ChangedBrief(file, overrides, start),
                new OpenViews(controls, start, solved(planner, start), version.text(), remarks),
                start);
    }

    private static BriefResult solved(Planner planner, Brief brief) {
        var outcome = planner.answer(brief).measured();
        return outcome.fold(
                found -> BlendResults.of(found, OptionalSections.NONE), none -> why(planner, brief), BriefResults::of);
    }

    /** Why there is no blend, with as much search for few words as every other command takes. */
    private static BriefResult why(Planner planner, Brief brief) {
        return BriefResults.of(planner.plan(brief));
    }

    /** The page without changes. */
    String page() {
        return OpenPage.of(views.of(start, solved(planner, start)));
    }

    /** The page with changes, or what is wrong with them. */
    String page(Changes changes) {
        var reading = changed.with(changes);
        if (reading instanceof Reading.Rejected<Brief> rejected) {
            List<Problem> problems = rejected.problems();
            return OpenPage.of(problems, controls);
        }
        var brief = ((Reading.Accepted<Brief>) reading).value();
        return OpenPage.of(views.of(brief, solved(planner, brief)));
    }

    /** Writes what is changed as documents. */
    SavedBrief saver() {
        return new SavedBrief(
                changed, version.written().keySet().stream().map(Path::of).toList());
    }
}
