package panade.page;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.plan.Outcome.Blended;
import panade.quotes.PriceComparison;
import panade.quotes.PriceComparison.Single;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.QuotesReport;

/** Price lists compared: their costs, and the blends that they ask for next to each other. */
final class SideBySide {
    private final Brief brief;
    private final List<String> names = new ArrayList<>();
    private final List<Blend> blends = new ArrayList<>();

    private SideBySide(Brief brief, PriceComparison comparison) {
        this.brief = brief;
        for (int i = 0; i < comparison.lists().size(); i++) {
            var name = comparison.lists().get(i);
            if (comparison.best().get(i) instanceof Blended best) {
                add(name, best.blend());
            }
        }
        comparison.regret().found().map(Single::blend).ifPresent(blend -> add("safest", blend));
        comparison.average().found().map(Single::blend).ifPresent(blend -> add("on average", blend));
    }

    static List<Block> of(Brief brief, PriceComparison comparison) {
        var blocks = new ArrayList<>(QuotesReport.costs(brief, comparison));
        blocks.add(new Heading("One blend for all"));
        blocks.add(new Points(QuotesReport.singleCosts(brief, comparison)));
        var side = new SideBySide(brief, comparison);
        if (!side.blends.isEmpty()) {
            blocks.add(new Heading("The blends side by side, share %"));
            blocks.add(side.table());
        }
        return blocks;
    }

    private void add(String name, Blend blend) {
        names.add(name);
        blends.add(blend);
    }

    private Table table() {
        var columns = new ArrayList<Column>();
        columns.add(new Column("Ingredient", false));
        names.forEach(name -> columns.add(new Column(name, true)));
        var rows = blends.stream()
                .flatMap(blend -> blend.lines().stream())
                .map(line -> line.use().ingredient())
                .distinct()
                .sorted((a, b) -> greatest(b).compareTo(greatest(a)))
                .map(this::row)
                .toList();
        return new Table(columns, rows);
    }

    private BigFraction greatest(String id) {
        return blends.stream()
                .map(blend -> blend.shareOf(id))
                .reduce(BigFraction.ZERO, (a, b) -> a.compareTo(b) < 0 ? b : a);
    }

    private List<String> row(String id) {
        var row = new ArrayList<String>();
        row.add(brief.set().ingredient(id).name());
        blends.forEach(blend -> row.add(share(blend.shareOf(id))));
        return row;
    }

    private static String share(BigFraction share) {
        return share.signum() == 0 ? "\u2013" : Figures.percent(share);
    }
}
