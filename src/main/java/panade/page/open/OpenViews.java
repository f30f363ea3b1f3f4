package panade.page.open;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.BoundId;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Side;
import panade.domain.purchase.Offer;
import panade.page.Content.Proof;
import panade.page.Content.Stages;
import panade.page.Corridor;
import panade.page.Page;
import panade.page.PageView.Headline;
import panade.page.Proofs;
import panade.page.StageParts;
import panade.page.open.OpenView.BoundEntry;
import panade.page.open.OpenView.PriceEntry;
import panade.report.Block;
import panade.report.Figures;
import panade.report.Remarks;
import panade.result.BlendResult;
import panade.result.BoundResult;
import panade.result.BriefResult;
import panade.result.NoBlendResult;
import panade.result.RemarkLine;

/** Words what came of a brief as it stands on the page. */
public final class OpenViews {
    private final Controls controls;
    private final Brief start;
    private final BriefResult atStart;
    private final String version;
    private final List<Block> remarks;

    /**
     * Views of what became of a brief since it was opened.
     *
     * @param start the brief as its documents state it
     * @param atStart what came of that
     * @param version of the documents
     */
    public OpenViews(Controls controls, Brief start, BriefResult atStart, String version, List<RemarkLine> remarks) {
        this.controls = controls;
        this.start = start;
        this.atStart = atStart;
        this.version = version;
        this.remarks = remarks.isEmpty() ? List.of() : List.of(Remarks.lines(remarks));
    }

    /** The page for a brief with changes. */
    public OpenView of(Brief now, BriefResult result) {
        var moved = new MovedWords(atStart, result, start.currency());
        var conflict = result instanceof NoBlendResult none ? new Cures(controls, none).conflict() : null;
        return new OpenView(
                start.title(),
                facts(),
                version,
                saveAs(),
                controls.fields(),
                headline(result),
                moved.said(),
                moved.moved(),
                result.<@Nullable Stages>fold(StageParts::of, none -> null, open -> null),
                conflict,
                bounds(now, result),
                OtherLimits.of(result),
                prices(result),
                result.<@Nullable Proof>fold(Proofs::of, Proofs::of, open -> null),
                remarks);
    }

    private List<String> facts() {
        return List.of("opened from " + start.file(), "nothing on this page changes that file");
    }

    private String saveAs() {
        var name = start.file()
                .substring(Math.max(start.file().lastIndexOf('/'), start.file().lastIndexOf('\\')) + 1);
        return name.replaceFirst("\\.[^.]*$", "") + "-changed.json";
    }

    private static Headline headline(BriefResult result) {
        return result.fold(
                Page::headline,
                Page::headline,
                open -> new Headline(
                        false,
                        "Not decided",
                        List.of("Neither a blend nor that there is none could be proved: " + open.reason() + ".")));
    }

    private List<BoundEntry> bounds(Brief now, BriefResult result) {
        var names = new HashMap<BoundId, String>();
        now.bounds().forEach(bound -> names.put(bound.id(), bound.title()));
        var found = byId(result);
        return IntStream.range(0, controls.bounds().size())
                .mapToObj(i -> {
                    var bound = controls.bounds().get(i);
                    return entry(i, names.getOrDefault(bound.id(), bound.title()), found.get(bound.id()));
                })
                .toList();
    }

    private static Map<BoundId, BoundResult> byId(BriefResult result) {
        var found = new HashMap<BoundId, BoundResult>();
        if (result instanceof BlendResult blend) {
            blend.bounds().get().stream()
                    .filter(bound -> bound.kind() == LimitKind.BRIEF || bound.kind() == LimitKind.STAGE)
                    .forEach(bound -> found.put(new BoundId(bound.file(), bound.path(), ""), bound));
        }
        return found;
    }

    private BoundEntry entry(int i, String name, @Nullable BoundResult bound) {
        return new BoundEntry(
                "b" + i,
                name,
                controls.min(i),
                controls.max(i),
                bound == null ? "" : value(bound),
                bound == null ? null : Corridor.of(bound),
                bound == null ? "" : touch(bound.binding()),
                bound == null ? "" : words(bound));
    }

    static String value(BoundResult bound) {
        return bound.value() == null ? "none" : Figures.with(bound.value(), bound.unit());
    }

    static String touch(@Nullable Side side) {
        if (side == null) {
            return "";
        }
        return switch (side) {
            case MIN -> "at its least";
            case MAX -> "at its most";
            case FIXED -> "fixed";
        };
    }

    static String words(BoundResult bound) {
        if (bound.value() == null) {
            return "nothing in this blend to measure it on";
        }
        if (bound.binding() == null) {
            return "";
        }
        return bound.holdsCostUp() ? "holds the cost up" : "a small move changes nothing";
    }

    private List<PriceEntry> prices(BriefResult result) {
        var shares = new HashMap<List<String>, BigFraction>();
        if (result instanceof BlendResult blend) {
            blend.blend()
                    .forEach(line ->
                            shares.merge(List.of(line.ingredient(), line.supplier()), line.share(), BigFraction::add));
        }
        return IntStream.range(0, controls.offers().size())
                .mapToObj(i -> {
                    var offer = controls.offers().get(i);
                    return price(i, offer, shares.get(List.of(offer.ingredient(), offer.supplier())));
                })
                .toList();
    }

    private PriceEntry price(int i, Offer offer, @Nullable BigFraction share) {
        boolean had = start.offers().contains(offer);
        return new PriceEntry(
                "p" + i,
                start.set().ingredient(offer.ingredient()).name(),
                offer.supplier(),
                controls.price(i),
                controls.out(i),
                had,
                had ? (share == null ? "" : Figures.percent(share) + " %") : "may not be used, or is out of stock");
    }
}
