package panade.page;

import java.util.ArrayList;
import java.util.List;
import panade.page.Content.Fold;
import panade.page.Content.Folds;
import panade.plan.Outcome.Blended;
import panade.report.Block;
import panade.report.Block.Heading;
import panade.report.HoldingsTable;
import panade.report.RoomTable;
import panade.report.UnusedTable;

/** Tables that are looked up rather than read. */
final class MoreFolds {
    private MoreFolds() {}

    static Folds of(Blended blended) {
        var folds = new ArrayList<Fold>();
        add(folds, RoomTable.of(blended));
        add(folds, UnusedTable.of(blended.brief(), blended.explanation().unused()));
        add(folds, HoldingsTable.of(blended.explanation().properties()));
        return new Folds(folds);
    }

    /** A report's heading becomes what is pressed to see the rest. */
    private static void add(List<Fold> folds, List<Block> blocks) {
        if (!blocks.isEmpty() && blocks.get(0) instanceof Heading heading) {
            folds.add(new Fold(heading.text(), blocks.subList(1, blocks.size())));
        }
    }
}
