package panade.page.open;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.open.MovedResults;
import panade.domain.Side;
import panade.page.open.OpenView.Moved;
import panade.quantity.Decimal;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.blend.VerdictWords;
import panade.result.BlendResult;
import panade.result.BlendResult.Basis;
import panade.result.BriefResult;
import panade.result.open.MovedResult;
import panade.result.open.MovedResult.BindingMoved;
import panade.result.open.MovedResult.ShareMoved;

/** Words what moved since the start. */
final class MovedWords {
    private static final List<Column> COLUMNS = List.of(
            new Column("Ingredient", false),
            new Column("start %", true),
            new Column("now %", true),
            new Column("moved", true));

    private final BriefResult start;
    private final BriefResult now;
    private final String currency;

    MovedWords(BriefResult start, BriefResult now, String currency) {
        this.start = start;
        this.now = now;
        this.currency = currency;
    }

    /** What came of it in one sentence, to be read behind the cost. */
    String said() {
        return now.fold(
                this::said,
                none -> "Proved: no blend can meet every bound.",
                open -> "Neither a blend nor that there is none could be proved.");
    }

    private String said(BlendResult blend) {
        var proved = blend.certificate().complete() ? "Proved." : "Not proved.";
        return start instanceof BlendResult first ? sentence(first, blend) + " " + proved : proved;
    }

    private String sentence(BlendResult first, BlendResult blend) {
        var words = change(MovedResults.of(first, blend), first);
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    Moved moved() {
        if (!(start instanceof BlendResult first)) {
            return new Moved(List.of("At the start there was no blend to compare with."), List.of());
        }
        if (!(now instanceof BlendResult blend)) {
            return new Moved(
                    List.of("At the start the cheapest blend cost " + new VerdictWords(first).perPound() + "."),
                    List.of());
        }
        var moved = MovedResults.of(first, blend);
        var sentences = new ArrayList<String>();
        sentences.add(sentence(first, blend));
        addBindings(moved, sentences);
        return new Moved(sentences, shares(moved));
    }

    private String change(MovedResult moved, BlendResult first) {
        var change = moved.toPerKg().subtract(moved.fromPerKg());
        if (change.signum() == 0) {
            return "the same cost as at the start";
        }
        var basis = first.cost().basis() == Basis.COOKED ? " per cooked lb" : "/lb";
        return small(Figures.perPound(change.abs())) + (currency.isEmpty() ? "" : " " + currency) + basis
                + (change.signum() < 0 ? " less" : " more") + " than at the start ("
                + new VerdictWords(first).perPound() + ")";
    }

    /** What is less than a hundredth of a cent is not told as nothing. */
    private static String small(BigFraction money) {
        var words = Figures.money(money);
        return BigFraction.ZERO.equals(Decimal.of(words)) ? Figures.significant(money, 1) : words;
    }

    private static void addBindings(MovedResult moved, List<String> sentences) {
        add("Now at its least: ", Side.MIN, moved, sentences);
        add("Now at its most: ", Side.MAX, moved, sentences);
        add("Now fixed: ", Side.FIXED, moved, sentences);
        add("No longer touched: ", null, moved, sentences);
    }

    private static void add(String lead, @Nullable Side side, MovedResult moved, List<String> sentences) {
        var titles = moved.bindings().stream()
                .filter(each -> each.to() == side)
                .map(BindingMoved::title)
                .collect(Collectors.joining("; "));
        if (!titles.isEmpty()) {
            sentences.add(lead + titles + ".");
        }
    }

    private static List<Block> shares(MovedResult moved) {
        return moved.shares().isEmpty()
                ? List.of()
                : List.of(new Table(
                        COLUMNS, moved.shares().stream().map(MovedWords::row).toList()));
    }

    private static List<String> row(ShareMoved share) {
        var change = share.change();
        return List.of(
                share.name(),
                share.from().signum() == 0 ? "none" : Figures.percent(share.from()),
                share.to().signum() == 0 ? "none" : Figures.percent(share.to()),
                (change.signum() < 0 ? "\u2212" : "+") + Figures.percent(change.abs()));
    }
}
