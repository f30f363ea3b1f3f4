package panade.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.assemble.QuotesResults;
import panade.page.Content.Blocks;
import panade.page.PageView.Headline;
import panade.page.PageView.Section;
import panade.report.Block.Points;
import panade.report.Cautions;
import panade.report.Remarks;
import panade.report.blend.BlendReport;
import panade.report.blend.ConflictReport;
import panade.report.blend.VerdictWords;
import panade.report.plate.PanelReport;
import panade.report.plate.SheetReport;
import panade.result.BlendResult;
import panade.result.BriefFacts;
import panade.result.NoBlendResult;
import panade.result.RemarkLine;

/** Writes findings as one page. */
public final class Page {
    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(ContentType.Html);

    private final ReportInput findings;
    private final List<Section> sections = new ArrayList<>();

    private Page(ReportInput findings) {
        this.findings = findings;
    }

    /** The page as HTML; there must be an answer, a blend or the proof that there is none. */
    public static String of(ReportInput findings) {
        var page = new Page(findings);
        return findings.outcome().fold(page::of, page::of, open -> {
            throw new IllegalArgumentException("nothing is proved, so there is nothing to show");
        });
    }

    private String of(BlendResult result) {
        add("blend", "What goes in", StageParts.of(result));
        add("money", "Where the money goes", MoneyBars.of(result));
        add("bounds", "Every bound, from floor to ceiling", BoundRows.of(result));
        if (!findings.curves().isEmpty()) {
            add("curves", "If a number moves", CurveViews.of(findings.curves()));
        }
        addComparison();
        addPanel();
        add("mind", "Mind", new Blocks(List.of(new Points(BlendReport.cautions(result)))));
        addRemarks(result.remarks());
        add("proof", "The proof", Proofs.of(result));
        var sheet = findings.sheet();
        if (sheet != null) {
            add("sheet", "Batch sheet, " + result.brief().batch(), new Blocks(SheetReport.bare(sheet)));
        }
        add("more", "To look up", MoreFolds.of(result));
        return render(result.brief(), headline(result));
    }

    /** What a blend comes to, in a line and a few sentences. */
    public static Headline headline(BlendResult result) {
        var words = new VerdictWords(result);
        var sentences = new ArrayList<>(List.of(words.rest()));
        if (!words.target().isEmpty()) {
            sentences.add(words.target());
        }
        sentences.add(words.proof());
        sentences.addAll(words.label());
        sentences.addAll(words.choice());
        return new Headline(true, words.perPound(), sentences);
    }

    private String of(NoBlendResult result) {
        add("conflict", "What stands in the way", new Blocks(ConflictReport.sets(result)));
        add("cures", "What would make a blend possible", new Blocks(ConflictReport.cures(result)));
        addComparison();
        add("mind", "Mind", new Blocks(List.of(new Points(Cautions.ofChanges()))));
        addRemarks(result.remarks());
        add("proof", "The proof", Proofs.of(result));
        return render(result.brief(), headline(result));
    }

    /** That there is no blend. */
    public static Headline headline(NoBlendResult result) {
        return new Headline(false, "No blend", List.of(ConflictReport.verdict(result)));
    }

    private void addRemarks(@Nullable List<RemarkLine> remarks) {
        if (remarks != null && !remarks.isEmpty()) {
            add("remarks", "Remarks", new Blocks(List.of(Remarks.lines(remarks))));
        }
    }

    private void addComparison() {
        var comparison = findings.comparison();
        if (comparison != null) {
            add(
                    "lists",
                    "Price list against price list",
                    new Blocks(SideBySide.of(QuotesResults.of(findings.brief(), comparison, List.of()))));
        }
    }

    private void addPanel() {
        var panel = findings.panel();
        if (panel != null) {
            add(
                    "panel",
                    "What the label would say",
                    new Blocks(PanelReport.of(panel).blocks()));
        }
    }

    private void add(String id, String title, Content content) {
        sections.add(new Section(id, title, content));
    }

    private String render(BriefFacts brief, Headline headline) {
        var output = new StringOutput();
        var view = new PageView(brief.title(), facts(brief), headline, sections, Inline.load());
        TEMPLATES.render("page.jte", view, output);
        return output.toString();
    }

    private List<String> facts(BriefFacts brief) {
        var lists = brief.priceFiles().stream().map(Page::fileName).distinct().toList();
        var comparison = findings.comparison();
        var others =
                comparison == null ? "" : ", the first of " + comparison.lists().size() + " lists";
        return List.of(
                brief.batch() + " batch",
                "brief: " + fileName(brief.file()),
                "prices: " + String.join(", ", lists) + others);
    }

    private static String fileName(String path) {
        return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
    }
}
