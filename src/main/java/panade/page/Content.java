package panade.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.report.Block;

/** What stands in a section. All numbers are rounded and worded already. */
public sealed interface Content {
    /** Blocks of a report, as they come. */
    record Blocks(List<Block> blocks) implements Content {}

    /** Blocks that are shown when somebody asks for them. */
    record Folds(List<Fold> folds) implements Content {}

    /** A title and what unfolds under it. */
    record Fold(String title, List<Block> blocks) {}

    /** A blend, stage by stage. */
    record Stages(List<StagePart> stages) implements Content {}

    /** A stage with its weight and lines. */
    record StagePart(String title, String weight, List<StageLine> lines) {}

    /** An ingredient in a stage: percentages of the whole batch and of its cost. */
    record StageLine(String ingredient, String supplier, String grams, String share, String costShare) {}

    /**
     * Where the money goes.
     *
     * @param unit what money is told in
     * @param rest words for what is too small to be shown
     * @param full blocks on labour and all else; none when nothing is stated
     */
    record Money(String unit, List<MoneyBar> bars, String rest, List<Block> full) implements Content {}

    /**
     * What an ingredient takes of the money and of the weight, in per cent; the bars as per cent of their track.
     *
     * @param cost money per pound of the mince
     */
    record MoneyBar(
            String ingredient, String cost, String costShare, String share, String costWidth, String shareWidth) {}

    /** Every bound, those that hold the cost up first. */
    record Bounds(List<BoundRow> holding, List<BoundRow> kept, String hidden) implements Content {}

    /**
     * A bound: numbers with no unit, and the unit.
     *
     * @param path where it is written
     * @param floor empty when there is none
     * @param ceiling empty when there is none
     * @param touch words for where the blend touches it; empty when it does not
     * @param price words for what moving its number does; empty when that is nothing
     */
    record BoundRow(
            String path,
            String name,
            String value,
            String unit,
            String floor,
            String ceiling,
            String touch,
            String price,
            Corridor corridor) {}

    /** How the least cost follows some numbers. */
    record Curves(List<CurveView> curves) implements Content {}

    /**
     * A curve.
     *
     * @param axis what is across, with its unit
     * @param unit that unit alone
     * @param costAxis what is up, with its unit
     * @param money that unit alone
     * @param steps whether the blend holds from one point to the next and jumps there; else it moves evenly between
     * @param now where the number stands, as a plain decimal
     * @param moving names of the ingredients that move anywhere along it
     * @param still words for all the others
     */
    record CurveView(
            String id,
            String title,
            String sentence,
            String axis,
            String unit,
            String costAxis,
            String money,
            boolean steps,
            String now,
            List<String> moving,
            List<CurvePoint> points,
            List<String> changes,
            String still) {}

    /**
     * A point of a curve.
     *
     * @param kind {@code just-above} or {@code just-below} where the cost jumps to it beside the number, {@code at}
     *     where it holds at the number itself
     * @param shares in per cent, in the order of the moving ingredients
     */
    record CurvePoint(String kind, Cell at, Cell cost, List<Cell> shares) {}

    /**
     * A figure in a table that is drawn too.
     *
     * @param text rounded for people
     * @param exact twelve digits for drawing
     */
    record Cell(String text, String exact) {}

    /** What is proved, and the exact cost for whoever wants to check it. */
    record Proof(List<String> sentences, @Nullable String exactCost) implements Content {}
}
