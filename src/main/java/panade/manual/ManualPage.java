package panade.manual;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.AttributeProvider;
import org.commonmark.renderer.html.HtmlRenderer;
import panade.report.ReportDocument;

/**
 * One page of the manual, written in Markdown (CommonMark 0.31, with GitHub's tables).
 *
 * @param name what it is called on the command line, and in links to it
 * @param markdown its text, which begins with its title
 */
public record ManualPage(String name, String markdown) {
    private static final List<Extension> TABLES = List.of(TablesExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(TABLES).build();

    /** Anything in angle brackets is shown, not obeyed, and no link leads to a script. */
    private static final HtmlRenderer HTML = HtmlRenderer.builder()
            .extensions(TABLES)
            .escapeHtml(true)
            .sanitizeUrls(true)
            .attributeProviderFactory(context -> attributes())
            .build();

    private static final Pattern OTHER_PAGE = Pattern.compile("([a-z-]+)\\.md(?:#.*)?");

    /** What it answers. */
    public String title() {
        return text().title();
    }

    /** The page in words, for whoever lays reports out. */
    public ReportDocument text() {
        return PageWords.of(parsed());
    }

    /**
     * The page without its title as HTML; its headings stand below that title, of which the index has none of its own,
     * and links to pages lead to their names.
     */
    public String html() {
        var document = parsed();
        var first = document.getFirstChild();
        if (first instanceof Heading) {
            first.unlink();
        }
        int below = name.equals(Manual.INDEX) ? 0 : 1;
        document.accept(new AbstractVisitor() {
            @Override
            public void visit(Heading heading) {
                heading.setLevel(heading.getLevel() + below);
            }

            @Override
            public void visit(Link link) {
                page(link.getDestination()).ifPresent(page -> link.setDestination("#" + page));
            }
        });
        return HTML.render(document);
    }

    /** The pages that it leads to, in their order. */
    List<String> links() {
        var names = new ArrayList<String>();
        parsed().accept(new AbstractVisitor() {
            @Override
            public void visit(Link link) {
                page(link.getDestination())
                        .filter(page -> !names.contains(page))
                        .ifPresent(names::add);
            }
        });
        return names;
    }

    /** The name of the page that a link leads to, if it leads to one. */
    static Optional<String> page(String destination) {
        return Optional.of(OTHER_PAGE.matcher(destination))
                .filter(Matcher::matches)
                .map(matched -> matched.group(1));
    }

    private Node parsed() {
        return PARSER.parse(markdown);
    }

    /** What is too wide for a telephone can be moved, also by the keyboard. */
    private static AttributeProvider attributes() {
        return (Node node, String tag, Map<String, String> attributes) -> {
            if (tag.equals("pre")) {
                attributes.put("tabindex", "0");
            } else if (node instanceof Link) {
                attributes.remove("rel");
            } else if (node instanceof TableBlock) {
                attributes.put("class", "plain");
            }
        };
    }
}
