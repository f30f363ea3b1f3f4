package panade.document.kitchen;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.quantity.Decimal;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Cell.Look;
import panade.sheet.WordList;

/** Writes a value into a cell so that {@link CellValues} reads the same; what has no short form is written out. */
final class CellText {
    /** A spreadsheet keeps so many significant digits. */
    private static final int DIGITS = 15;

    private CellText() {}

    /** The cell for a value of the column or field of that name. */
    static Cell of(String column, Node node) {
        if (node instanceof NumberNode number) {
            return number(number.value(), number.spelling());
        }
        return text(shortForm(column, node).orElseGet(() -> NodeText.of(node)));
    }

    static Cell text(String text) {
        return new Cell.Text(text, Look.TYPED);
    }

    /** A number; as text where a spreadsheet would not keep all of its digits. */
    static Cell number(BigFraction value, String spelling) {
        boolean keeps = Decimal.of(Decimal.significant(value, DIGITS)).compareTo(value) == 0;
        return keeps ? Cell.input(value, Form.PLAIN) : text(spelling);
    }

    private static Optional<String> shortForm(String column, Node node) {
        if (node instanceof TextNode text) {
            var form = Sheets.NAMED.contains(column) ? WordList.written(List.of(text.text())) : text.text();
            return same(column, node, form);
        }
        if (node instanceof ArrayNode array && array.items().stream().allMatch(TextNode.class::isInstance)) {
            var words =
                    array.items().stream().map(item -> ((TextNode) item).text()).toList();
            boolean none = words.isEmpty();
            return same(column, node, none ? WordList.NONE : WordList.written(words));
        }
        if (node instanceof ObjectNode object
                && Sheets.MEASURED.contains(column)
                && object.fields().size() == 1) {
            var field = object.fields().get(0);
            return shortForm("kind", field.value()).flatMap(name -> same(column, node, field.name() + " " + name));
        }
        return Optional.empty();
    }

    /** The form if it is read as the same value; the reader itself is asked, so that the two never part. */
    private static Optional<String> same(String column, Node node, String form) {
        var problems = new panade.document.syntax.Problems();
        var cell = new Workbook.Filled(form.strip(), node.origin());
        if (form.isBlank()) {
            return Optional.empty();
        }
        var read = new CellValues(problems).of(column, cell, "");
        return problems.none() && NodeText.of(read).equals(NodeText.of(node)) ? Optional.of(form) : Optional.empty();
    }
}
