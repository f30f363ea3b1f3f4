package panade.page;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Side;
import panade.explain.Explanation.Limit;
import panade.page.Content.BoundRow;
import panade.page.Content.Bounds;
import panade.plan.Outcome.Blended;
import panade.report.BindingWords;
import panade.report.Figures;
import panade.report.LimitTable;

/** Bounds with their values, walls and prices. */
final class BoundRows {
    private final BindingWords words;

    private BoundRows(Blended blended) {
        this.words = new BindingWords(blended);
    }

    static Bounds of(Blended blended) {
        var rows = new BoundRows(blended);
        var all = blended.explanation().limits();
        var shown = LimitTable.shown(all);
        var holding = BindingWords.touched(shown).stream()
                .filter(BindingWords::matters)
                .toList();
        var kept = shown.stream().filter(limit -> !holding.contains(limit)).toList();
        int hidden = all.size() - shown.size();
        return new Bounds(
                holding.stream().map(rows::row).toList(),
                kept.stream().map(rows::row).toList(),
                hidden == 0 ? "" : LimitTable.hidden(hidden));
    }

    private BoundRow row(Limit limit) {
        return new BoundRow(
                limit.path(),
                limit.title(),
                limit.value() == null ? "none" : Figures.significant(limit.value(), 4),
                limit.unit().symbol(),
                number(limit.min()),
                number(limit.max()),
                limit.value() == null ? "" : touch(limit.touch()),
                price(limit),
                Corridor.of(limit));
    }

    private static String number(@Nullable BigFraction number) {
        return number == null ? "" : Figures.significant(number, 5);
    }

    private static String touch(@Nullable Side touch) {
        if (touch == null) {
            return "";
        }
        return switch (touch) {
            case MIN -> "at its floor";
            case MAX -> "at its ceiling";
            case FIXED -> "fixed";
        };
    }

    private String price(Limit limit) {
        if (limit.value() == null) {
            return "nothing in this blend to measure it on";
        }
        if (limit.touch() == null) {
            return "";
        }
        return BindingWords.matters(limit) ? words.effect(limit) : "a small move changes nothing";
    }
}
