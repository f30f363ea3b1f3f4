package panade.page;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Side;
import panade.page.Content.BoundRow;
import panade.page.Content.Bounds;
import panade.report.Figures;
import panade.report.blend.BindingWords;
import panade.report.blend.LimitTable;
import panade.result.BlendResult;
import panade.result.BoundResult;

/** Bounds with their values, walls and prices. */
final class BoundRows {
    private final BindingWords words;

    private BoundRows(BlendResult result) {
        this.words = new BindingWords(result.brief().currency());
    }

    static Bounds of(BlendResult result) {
        var rows = new BoundRows(result);
        var all = result.bounds().get();
        var shown = LimitTable.shown(all);
        var holding = BindingWords.touched(shown).stream()
                .filter(BoundResult::holdsCostUp)
                .toList();
        var kept = shown.stream().filter(bound -> !holding.contains(bound)).toList();
        int hidden = all.size() - shown.size();
        return new Bounds(
                holding.stream().map(rows::row).toList(),
                kept.stream().map(rows::row).toList(),
                hidden == 0 ? "" : LimitTable.hidden(hidden));
    }

    private BoundRow row(BoundResult bound) {
        return new BoundRow(
                bound.path(),
                bound.title(),
                bound.value() == null ? "none" : Figures.significant(bound.value(), 4),
                bound.unit(),
                number(bound.min()),
                number(bound.max()),
                bound.value() == null ? "" : touch(bound.binding()),
                price(bound),
                Corridor.of(bound));
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

    private String price(BoundResult bound) {
        if (bound.value() == null) {
            return "nothing in this blend to measure it on";
        }
        if (bound.binding() == null) {
            return "";
        }
        return bound.holdsCostUp() ? words.effect(bound) : "a small move changes nothing";
    }
}
