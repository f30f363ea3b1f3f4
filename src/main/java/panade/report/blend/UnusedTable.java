package panade.report.blend;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.result.BlendResult.NearestUnused;
import panade.result.BlendResult.UnusedIngredient;

/** Tabulates what is not used, and the price that would change that. */
public final class UnusedTable {
    private static final List<Column> COLUMNS = List.of(
            new Column("Ingredient", false),
            new Column("Now /lb", true),
            new Column("Comes in below", true),
            new Column("Then %", true),
            new Column("Saves /lb", true),
            new Column("", false));

    private UnusedTable() {}

    /** The table; nothing when everything is used. */
    public static List<Block> of(List<UnusedIngredient> unused) {
        return unused.isEmpty()
                ? List.of()
                : List.of(
                        new Heading("Not used, and the price at which each would come in"),
                        new Table(COLUMNS, unused.stream().map(UnusedTable::row).toList()),
                        new Paragraph(
                                "Prices as bought. \"Then\" is its share of the blend once it comes in; \"saves\" is"
                                        + " what a price 5 % below that would save; \"not worth it\" is under a cent a pound and"
                                        + " under half a per cent."));
    }

    /** How many there are, and which of them is nearest to coming in. */
    static List<Block> nearest(NearestUnused nearest, String currency) {
        int unused = nearest.first().size() + nearest.others();
        if (unused == 0) {
            return List.of();
        }
        var words = unused == 1 ? "1 ingredient is not used." : unused + " ingredients are not used.";
        return List.of(new Paragraph(nearest.first().stream()
                .filter(each -> each.entersAt() != null && each.pricePerKg().signum() > 0)
                .max(Comparator.comparing(UnusedTable::keptOfPrice))
                .map(each -> words + " Nearest to coming in: " + each.name() + ", below "
                        + perPound(Objects.requireNonNull(each.entersAt()), currency) + " as bought, now "
                        + Figures.money(Figures.perPound(each.pricePerKg())) + ".")
                .orElse(words)));
    }

    /** The part of its price that is left where it comes in. */
    private static BigFraction keptOfPrice(UnusedIngredient unused) {
        return Objects.requireNonNull(unused.entersAt()).divide(unused.pricePerKg());
    }

    private static String perPound(BigFraction perKg, String currency) {
        return Figures.money(Figures.perPound(perKg)) + (currency.isEmpty() ? "" : " " + currency) + "/lb";
    }

    private static List<String> row(UnusedIngredient unused) {
        var price = Figures.money(Figures.perPound(unused.pricePerKg()));
        var at = unused.entersAt();
        var share = unused.share();
        var saving = unused.savingPerKg();
        if (at == null || share == null || saving == null) {
            return List.of(unused.name(), price, "at no price", "", "", "");
        }
        return List.of(
                unused.name(),
                price,
                Figures.money(Figures.perPound(at)),
                Figures.percent(share),
                Figures.money(Figures.perPound(saving)),
                unused.worthwhile() ? "" : "not worth it");
    }
}
