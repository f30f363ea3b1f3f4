package panade.page;

import java.util.ArrayList;
import java.util.List;
import panade.page.Content.Fold;
import panade.page.Content.Folds;
import panade.report.Block;
import panade.report.Block.Heading;
import panade.report.blend.HoldingsTable;
import panade.report.blend.RoomTable;
import panade.report.blend.UnusedTable;
import panade.result.BlendResult;

/** Tables that are looked up rather than read. */
final class MoreFolds {
    private MoreFolds() {}

    static Folds of(BlendResult result) {
        var folds = new ArrayList<Fold>();
        add(folds, RoomTable.of(result));
        add(folds, UnusedTable.of(result.unused().get()));
        add(folds, HoldingsTable.of(result.properties()));
        return new Folds(folds);
    }

    /** A report's heading becomes what is pressed to see the rest. */
    private static void add(List<Fold> folds, List<Block> blocks) {
        if (!blocks.isEmpty() && blocks.get(0) instanceof Heading heading) {
            folds.add(new Fold(heading.text(), blocks.subList(1, blocks.size())));
        }
    }
}
