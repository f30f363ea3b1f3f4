package panade.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.explain.Explanation.Used;
import panade.explain.Room.IngredientRoom;
import panade.plan.Outcome.Blended;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;

/** Tabulates how far each ingredient and its price may move, and words the blends nearby. */
public final class RoomTable {
    private static final List<Column> COLUMNS = List.of(
            new Column("Ingredient", false),
            new Column("Share %", true),
            new Column("least", true),
            new Column("most", true),
            new Column("Price /lb", true),
            new Column("blend stays from", true),
            new Column("to", true));

    private final Blended outcome;
    private final Map<String, IngredientRoom> rooms;

    private RoomTable(Blended outcome) {
        this.outcome = outcome;
        this.rooms = outcome.room().ingredients().stream()
                .collect(Collectors.toMap(IngredientRoom::ingredient, Function.identity()));
    }

    /** The table and the blends nearby. */
    public static List<Block> of(Blended outcome) {
        var slack = Figures.significant(outcome.room().slack().multiply(100), 3);
        var blocks = new ArrayList<Block>();
        blocks.add(new Heading("Room to move for " + slack + " % more money, and prices that change nothing"));
        var table = new RoomTable(outcome);
        blocks.add(new Table(
                COLUMNS, outcome.explanation().used().stream().map(table::row).toList()));
        if (!outcome.alternatives().isEmpty()) {
            blocks.add(
                    new Paragraph("Clearly different blends that keep every bound for at most " + slack + " % more:"));
            blocks.add(new Points(
                    outcome.alternatives().stream().map(table::alternative).toList()));
        }
        return blocks;
    }

    private List<String> row(Used used) {
        var room = rooms.get(used.ingredient());
        return List.of(
                name(used.ingredient()),
                Figures.percent(outcome.blend().shareOf(used.ingredient())),
                room == null ? "" : Figures.percent(room.min()),
                room == null ? "" : Figures.percent(room.max()),
                price(used.pricePerKg(), ""),
                price(used.from(), "nothing"),
                price(used.to(), "any"));
    }

    private static String price(@Nullable BigFraction perKg, String otherwise) {
        return perKg == null ? otherwise : Figures.money(Figures.perPound(perKg));
    }

    private String alternative(Blend blend) {
        var changes = new ArrayList<String>();
        var best = outcome.blend();
        rooms.keySet().stream().sorted().forEach(id -> {
            var change = blend.shareOf(id).subtract(best.shareOf(id));
            if (change.abs().compareTo(BigFraction.of(5, 1000)) >= 0) {
                changes.add(name(id) + (change.signum() > 0 ? " +" : " -") + Figures.percent(change.abs()));
            }
        });
        return Figures.money(Figures.perPound(blend.costPerKg())) + "/lb, in per cent of the batch: "
                + String.join("; ", changes) + ".";
    }

    private String name(String id) {
        return outcome.brief().set().ingredient(id).name();
    }
}
