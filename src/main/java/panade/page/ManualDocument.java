package panade.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import panade.manual.Manual;
import panade.manual.ManualPage;

/**
 * The whole manual as one page that needs nothing else and looks like the report's.
 *
 * @param manual what is written
 * @param style all that the page has beside words; there is no script
 */
public record ManualDocument(Manual manual, String style) {
    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(ContentType.Html);

    /** The page as HTML. */
    public static String of(Manual manual) {
        var output = new StringOutput();
        var style = Inline.read("/panade/page/page.css") + Inline.read("/panade/page/manual.css");
        TEMPLATES.render("manual.jte", new ManualDocument(manual, style), output);
        return output.toString();
    }

    /** What a browser may do with the page: show it. */
    public String policy() {
        return Inline.NOTHING_ELSE + "; style-src " + Inline.source(style);
    }

    /** What stands before all: the index. */
    public ManualPage index() {
        return manual.pages().get(0);
    }

    /** All other pages, in the order of the index. */
    public List<ManualPage> pages() {
        return manual.pages().subList(1, manual.pages().size());
    }
}
