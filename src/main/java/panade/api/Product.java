package panade.api;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import panade.assemble.BriefResults;
import panade.assemble.RemarkLines;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.export.ResultJson;
import panade.plan.Planner;
import panade.remark.BriefRemarks;
import panade.result.BriefResult;
import panade.result.RemarkLine;

/** A brief as its documents state it, or with something else in place of what they state. Immutable. */
public final class Product {
    private final Planner planner;
    private final Path file;
    private final Overrides overrides;
    private final Brief brief;

    private Product(Planner planner, Path file, Overrides overrides, Brief brief) {
        this.planner = planner;
        this.file = file;
        this.overrides = overrides;
        this.brief = brief;
    }

    static Opened read(Planner planner, Path file, Overrides overrides) {
        var reading = Documents.readBrief(file, overrides);
        return reading instanceof Reading.Accepted<Brief> accepted
                ? new Opened.Sound(new Product(planner, file, overrides, accepted.value()))
                : new Opened.Faulty(((Reading.Rejected<Brief>) reading)
                        .problems().stream().map(Problem::text).toList());
    }

    private Opened with(List<Path> prices, @Nullable String batch, List<String> without, @Nullable String target) {
        return read(planner, file, new Overrides(prices, batch, without, target));
    }

    /** The same product made in another amount, such as {@code 40 lb}. */
    public Opened withBatch(String amount) {
        return with(overrides.prices(), amount, overrides.without(), overrides.target());
    }

    /** The same without an ingredient, by its id; what was left out before stays out. */
    public Opened without(String ingredient) {
        var out = Stream.concat(overrides.without().stream(), Stream.of(ingredient));
        return with(overrides.prices(), overrides.batch(), out.toList(), overrides.target());
    }

    /** The same bought from these price lists and no others. */
    public Opened withPrices(List<Path> lists) {
        return with(List.copyOf(lists), overrides.batch(), overrides.without(), overrides.target());
    }

    /** The same with another price to hope for, such as {@code 3.90/lb}. */
    public Opened withTarget(String price) {
        return with(overrides.prices(), overrides.batch(), overrides.without(), price);
    }

    /** What people call it. */
    public String title() {
        return brief.title();
    }

    /** Names of its bounds, in the order of the documents. */
    public List<String> boundNames() {
        return brief.bounds().stream().map(Bound::name).toList();
    }

    /** What is no fault in the documents and may still not be meant; some of it takes solving to see. */
    public List<RemarkLine> remarks() {
        return RemarkLines.of(BriefRemarks.on(planner, brief).remarks());
    }

    /** The cheapest blend with its proof, or why there is none; reasons are worked out when they are asked for. */
    public Answer solve() {
        return planner.answer(brief)
                .fold(Answer.Blend::new, Answer.NoBlend::new, open -> new Answer.Undecided(open.reason()));
    }

    /** All that {@code panade blend} tells: remarks, reasons, and how far each share may be varied for little money. */
    public BriefResult explain() {
        return BriefResults.of(planner.plan(BriefRemarks.on(planner, brief)));
    }

    /** The same as JSON, with the names that {@code panade blend --json} prints. */
    public String json() {
        return ResultJson.text(explain());
    }
}
