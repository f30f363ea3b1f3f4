package panade.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.question.QuotesReport;
import panade.result.BlendResult;
import panade.result.QuotesResult;
import panade.result.QuotesResult.OneBlend;
import panade.result.QuotesResult.Single;
import panade.result.ShareLine;

/** Price lists compared: their costs, and the blends that they ask for next to each other. */
final class SideBySide {
    private final List<String> names = new ArrayList<>();
    private final List<List<ShareLine>> blends = new ArrayList<>();

    private SideBySide(QuotesResult result) {
        for (int i = 0; i < result.lists().size(); i++) {
            if (result.best().get(i) instanceof BlendResult best) {
                add(result.lists().get(i), ShareLine.of(best));
            }
        }
        add("safest", result.regret());
        add("on average", result.average());
    }

    static List<Block> of(QuotesResult result) {
        var blocks = new ArrayList<>(QuotesReport.costs(result));
        blocks.add(new Heading("One blend for all"));
        blocks.add(new Points(QuotesReport.singleCosts(result)));
        var side = new SideBySide(result);
        if (!side.blends.isEmpty()) {
            blocks.add(new Heading("The blends side by side, share %"));
            blocks.add(side.table());
        }
        return blocks;
    }

    private void add(String name, @Nullable OneBlend found) {
        if (found instanceof Single single) {
            add(name, single.blend());
        }
    }

    private void add(String name, List<ShareLine> blend) {
        names.add(name);
        blends.add(blend);
    }

    private Table table() {
        var columns = new ArrayList<Column>();
        columns.add(new Column("Ingredient", false));
        names.forEach(name -> columns.add(new Column(name, true)));
        var titles = new LinkedHashMap<String, String>();
        blends.forEach(blend -> blend.forEach(line -> titles.put(line.ingredient(), line.name())));
        var rows = titles.keySet().stream()
                .sorted((a, b) -> greatest(b).compareTo(greatest(a)))
                .map(id -> row(id, titles.getOrDefault(id, id)))
                .toList();
        return new Table(columns, rows);
    }

    private BigFraction greatest(String id) {
        return blends.stream()
                .map(blend -> ShareLine.shareOf(id, blend))
                .reduce(BigFraction.ZERO, (a, b) -> a.compareTo(b) < 0 ? b : a);
    }

    private List<String> row(String id, String name) {
        var row = new ArrayList<String>();
        row.add(name);
        blends.forEach(blend -> row.add(share(ShareLine.shareOf(id, blend))));
        return row;
    }

    private static String share(BigFraction share) {
        return share.signum() == 0 ? "\u2013" : Figures.percent(share);
    }
}
