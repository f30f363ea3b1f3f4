package panade.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import panade.page.Content.Blocks;
import panade.page.PageView.Headline;
import panade.page.PageView.Section;
import panade.report.Block;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.formula.MadeReport;
import panade.report.formula.MadeSheetReport;
import panade.report.plate.PanelReport;
import panade.result.PanelResult;
import panade.result.formula.MadeBatchResult;
import panade.result.formula.MadeNow;

/** Writes what is told of a formula as one page: what it costs, breaks and holds, its label and what to weigh. */
public final class MadePage {
    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(ContentType.Html);

    private final MadeNow made;
    private final List<Section> sections = new ArrayList<>();

    private MadePage(MadeNow made) {
        this.made = made;
    }

    /**
     * The page as HTML.
     *
     * @param facts what it was made from, each a short line
     */
    public static String of(MadeNow made, PanelResult panel, MadeBatchResult sheet, List<String> facts) {
        return new MadePage(made).html(panel, sheet, facts);
    }

    private String html(PanelResult panel, MadeBatchResult sheet, List<String> facts) {
        var lead = addParts(MadeReport.withoutRemarks(made));
        add("panel", "What the label would say", PanelReport.of(panel).blocks());
        if (!made.remarks().isEmpty()) {
            add("remarks", "Remarks", List.of(Remarks.lines(made.remarks())));
        }
        add("sheet", "Batch sheet, " + made.batch(), MadeSheetReport.bare(sheet));
        var output = new StringOutput();
        var view = new PageView(
                made.title(),
                facts,
                new Headline(made.made().unsold().isEmpty(), figure(), lead),
                sections,
                Inline.load());
        TEMPLATES.render("page.jte", view, output);
        return output.toString();
    }

    private String figure() {
        var perLb = made.made().cost().perLb();
        var currency = made.made().cost().currency();
        return perLb == null
                ? "Cost not known"
                : Figures.money(perLb) + (currency == null ? "" : " " + currency) + "/lb as made";
    }

    /** Each heading of a report begins a section; the paragraphs before the first are the page's lead. */
    private List<String> addParts(List<Block> blocks) {
        var lead = new ArrayList<String>();
        var part = new ArrayList<Block>();
        var title = "";
        for (var block : blocks) {
            if (block instanceof Block.Heading heading) {
                addPart(title, part);
                part.clear();
                title = heading.text();
            } else if (title.isEmpty() && block instanceof Block.Paragraph paragraph) {
                lead.add(paragraph.text());
            } else {
                part.add(block);
            }
        }
        addPart(title, part);
        return lead;
    }

    private void addPart(String title, List<Block> part) {
        if (!title.isEmpty()) {
            add("part-" + (sections.size() + 1), title, part);
        }
    }

    private void add(String id, String title, List<Block> blocks) {
        sections.add(new Section(id, title, new Blocks(List.copyOf(blocks))));
    }
}
