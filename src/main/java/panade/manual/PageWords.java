package panade.manual;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.CustomNode;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.ReportDocument;

/** A page of Markdown as the blocks of a report: what a terminal shows of it. */
final class PageWords extends AbstractVisitor {
    private final List<Block> blocks = new ArrayList<>();

    private PageWords() {}

    static ReportDocument of(Node document) {
        var words = new PageWords();
        document.accept(words);
        return new ReportDocument(
                isTitle(document.getFirstChild()) ? inline(document.getFirstChild()) : "", words.blocks);
    }

    @Override
    public void visit(Heading heading) {
        if (!isTitle(heading)) {
            blocks.add(new Block.Heading(inline(heading)));
        }
    }

    private static boolean isTitle(Node node) {
        return node instanceof Heading heading && heading.getLevel() == 1;
    }

    @Override
    public void visit(Paragraph paragraph) {
        blocks.add(new Block.Paragraph(inline(paragraph)));
    }

    @Override
    public void visit(BulletList list) {
        blocks.add(
                new Block.Points(children(list).stream().map(PageWords::inline).toList()));
    }

    /** Steps keep their numbers. */
    @Override
    public void visit(OrderedList list) {
        int number = list.getMarkerStartNumber() == null ? 1 : list.getMarkerStartNumber();
        for (var item : children(list)) {
            blocks.add(new Block.Paragraph(number + ". " + inline(item)));
            number++;
        }
    }

    @Override
    public void visit(FencedCodeBlock code) {
        blocks.add(new Block.Drawing(code.getLiteral().lines().toList()));
    }

    @Override
    public void visit(CustomBlock block) {
        if (block instanceof TableBlock) {
            var rows = new ArrayList<List<String>>();
            block.accept(new AbstractVisitor() {
                @Override
                public void visit(CustomNode node) {
                    if (node instanceof TableRow) {
                        rows.add(children(node).stream().map(PageWords::inline).toList());
                    } else {
                        visitChildren(node);
                    }
                }
            });
            var columns =
                    rows.get(0).stream().map(head -> new Column(head, false)).toList();
            blocks.add(new Block.Table(columns, rows.subList(1, rows.size())));
        }
    }

    private static List<Node> children(Node parent) {
        var children = new ArrayList<Node>();
        for (var child = parent.getFirstChild(); child != null; child = child.getNext()) {
            children.add(child);
        }
        return children;
    }

    /** The words in a node on one line; a link to a page says how to read it. */
    private static String inline(Node node) {
        var words = new StringBuilder();
        node.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                words.append(text.getLiteral());
            }

            @Override
            public void visit(Code code) {
                words.append(code.getLiteral());
            }

            @Override
            public void visit(SoftLineBreak line) {
                words.append(' ');
            }

            @Override
            public void visit(HardLineBreak line) {
                words.append(' ');
            }

            @Override
            public void visit(Link link) {
                visitChildren(link);
                ManualPage.page(link.getDestination())
                        .ifPresent(page ->
                                words.append(" (panade manual ").append(page).append(')'));
            }
        });
        return words.toString();
    }
}
