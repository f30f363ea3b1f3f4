package panade.page.open;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import panade.document.syntax.Problem;
import panade.page.Inline;

/** Writes the page to work on, and what it needs. */
public final class OpenPage {
    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(ContentType.Html);

    private OpenPage() {}

    /** The page as HTML. Its script takes what changed out of a whole page, so that there is one way to write it. */
    public static String of(OpenView view) {
        return rendered("open.jte", view);
    }

    /** What is told in place of a page where documents are at fault. */
    public static String of(List<Problem> problems) {
        return rendered("faulty.jte", FaultsView.of(problems));
    }

    /** What is told where something typed is at fault. */
    public static String of(List<Problem> problems, Controls controls) {
        return rendered("faulty.jte", FaultsView.of(problems, controls));
    }

    private static String rendered(String template, Object view) {
        var output = new StringOutput();
        TEMPLATES.render(template, view, output);
        return output.toString();
    }

    /** The report's style, and what fields need beside it. */
    public static String style() {
        return Inline.read("/panade/page/page.css") + Inline.read("/panade/page/open.css");
    }

    /** What keeps the page in step with the program. */
    public static String script() {
        return Inline.read("/panade/page/open.js");
    }
}
