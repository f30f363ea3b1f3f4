package panade.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** Figures of a result for machines as the page is expected to word them. */
final class JsonFigures {
    static final BigDecimal POUND = new BigDecimal("0.45359237"); // NIST SP 811, appendix B.8

    private JsonFigures() {}

    static BigDecimal number(JsonNode node, String field) {
        return node.get(field).decimalValue();
    }

    static String money(BigDecimal perKg) {
        return perKg.multiply(POUND).setScale(4, RoundingMode.HALF_EVEN).toPlainString();
    }

    static String significant(BigDecimal number, int digits) {
        var rounded =
                number.round(new MathContext(digits, RoundingMode.HALF_EVEN)).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    static List<JsonNode> list(JsonNode node, String field) {
        var list = new ArrayList<JsonNode>();
        node.get(field).forEach(list::add);
        return list;
    }
}
