package panade.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import panade.assemble.BatchResults;
import panade.assemble.PanelResults;
import panade.assemble.QuotesResults;
import panade.assemble.TraceResults;
import panade.cost.ReportInput;
import panade.domain.Brief;
import panade.page.Content.Blocks;
import panade.page.PageView.Headline;
import panade.page.PageView.Section;
import panade.plan.Outcome.Blended;
import panade.plan.Outcome.Conflicted;
import panade.report.Block.Points;
import panade.report.Cautions;
import panade.report.ChoiceWords;
import panade.report.ConflictReport;
import panade.report.Remarks;
import panade.report.VerdictWords;
import panade.report.plate.PanelReport;
import panade.report.plate.SheetReport;

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
        if (findings.outcome() instanceof Blended blended) {
            return page.of(blended);
        }
        if (findings.outcome() instanceof Conflicted conflicted) {
            return page.of(conflicted);
        }
        throw new IllegalArgumentException("nothing is proved, so there is nothing to show");
    }

    private String of(Blended blended) {
        var brief = blended.brief();
        add("blend", "What goes in", StageParts.of(blended));
        add("money", "Where the money goes", MoneyBars.of(blended, findings.asides()));
        add("bounds", "Every bound, from floor to ceiling", BoundRows.of(blended));
        if (!findings.curves().isEmpty()) {
            add("curves", "If a number moves", CurveViews.of(
                            findings.curves().stream().map(TraceResults::of).toList()));
        }
        addComparison(brief);
        addPanel();
        add("mind", "Mind", new Blocks(List.of(new Points(Cautions.of(brief, blended.blend())))));
        addRemarks(blended.asked());
        add("proof", "The proof", Proofs.of(blended));
        var sheet = findings.sheet();
        if (sheet != null) {
            add("sheet", "Batch sheet, " + brief.batch().text(), new Blocks(SheetReport.bare(BatchResults.of(sheet))));
        }
        add("more", "To look up", MoreFolds.of(blended));
        return render(brief, headline(blended));
    }

    private Headline headline(Blended blended) {
        var words = new VerdictWords(blended);
        var sentences = new ArrayList<>(List.of(words.rest()));
        if (!words.target().isEmpty()) {
            sentences.add(words.target());
        }
        sentences.add(words.proof());
        var label = findings.asides().label();
        if (label != null) {
            sentences.add(words.label(label));
        }
        var choice = blended.choice();
        if (choice != null) {
            sentences.add(ChoiceWords.of(choice, blended.blend().costPerKg()));
        }
        return new Headline(true, words.perPound(), sentences);
    }

    private String of(Conflicted conflicted) {
        add("conflict", "What stands in the way", new Blocks(ConflictReport.sets(conflicted)));
        add("cures", "What would make a blend possible", new Blocks(ConflictReport.cures(conflicted)));
        addComparison(conflicted.brief());
        add("mind", "Mind", new Blocks(List.of(new Points(Cautions.ofChanges()))));
        addRemarks(conflicted.brief());
        add("proof", "The proof", Proofs.of(conflicted));
        return render(conflicted.brief(), new Headline(false, "No blend", List.of(ConflictReport.verdict(conflicted))));
    }

    private void addRemarks(Brief brief) {
        if (!brief.remarks().isEmpty()) {
            add("remarks", "Remarks", new Blocks(List.of(Remarks.points(brief.remarks()))));
        }
    }

    private void addComparison(Brief brief) {
        var comparison = findings.comparison();
        if (comparison != null) {
            add("lists", "Price list against price list", new Blocks(SideBySide.of(QuotesResults.of(brief, comparison, List.of()))));
        }
    }

    private void addPanel() {
        var panel = findings.panel();
        if (panel != null) {
            var draft = PanelReport.of(
                    PanelResults.of(panel, "Of the blend above, as it is calculated.", List.of()));
            add("panel", "What the label would say", new Blocks(draft.blocks()));
        }
    }

    private void add(String id, String title, Content content) {
        sections.add(new Section(id, title, content));
    }

    private String render(Brief brief, Headline headline) {
        var output = new StringOutput();
        var view = new PageView(brief.title(), facts(brief), headline, sections, Inline.load());
        TEMPLATES.render("page.jte", view, output);
        return output.toString();
    }

    private List<String> facts(Brief brief) {
        var lists = brief.offers().stream()
                .map(offer -> fileName(offer.origin().file()))
                .distinct()
                .toList();
        var comparison = findings.comparison();
        var others =
                comparison == null ? "" : ", the first of " + comparison.lists().size() + " lists";
        return List.of(
                brief.batch().text() + " batch",
                "brief: " + fileName(brief.file()),
                "prices: " + String.join(", ", lists) + others);
    }

    private static String fileName(String path) {
        return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
    }
}
