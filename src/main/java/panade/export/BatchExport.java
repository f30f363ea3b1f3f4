package panade.export;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.bench.BatchSheet;
import panade.bench.BatchSheet.Fail;
import panade.quantity.Decimal;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes what to weigh. */
public final class BatchExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final int GRAMS = 1000;
    private static final int PLACES = 6;

    private BatchExport() {}

    /** The result of {@code batch}. */
    public static String of(BatchSheet sheet) {
        return RemarkExport.print(node(sheet), sheet.brief().remarks());
    }

    static ObjectNode node(BatchSheet sheet) {
        var result = NODES.objectNode();
        var lines = NODES.arrayNode();
        sheet.lines().forEach(line -> {
            var node = NODES.objectNode();
            node.put("stage", line.use().stage());
            node.put("ingredient", line.use().ingredient());
            grams(node, "grams", line.weight());
            JsonExport.put(node, "least", inward(line.least(), RoundingMode.CEILING));
            var most = line.most();
            JsonExport.put(node, "most", most == null ? null : inward(most, RoundingMode.FLOOR));
            grams(node, "exact", line.exact());
            node.put("step", line.step().text());
            lines.add(node);
        });
        result.set("lines", lines);
        grams(result, "total", sheet.total());
        result.put("met", sheet.isMet());
        result.set("fails", fails(sheet.fails()));
        result.set("plainFails", fails(sheet.plainFails()));
        var fine = sheet.fineEnough();
        result.put("fineEnough", fine == null ? null : fine.text());
        result.put("endedEarly", sheet.endedEarly());
        JsonExport.put(result, "costPerKg", sheet.weighed().rawCostPerKg());
        var best = sheet.best();
        if (best != null) {
            result.set("best", JsonExport.node(best));
        }
        return result;
    }

    /** Grams, rounded to the side on which no bound breaks. */
    private static BigFraction inward(BigFraction kilograms, RoundingMode mode) {
        var grams = kilograms.multiply(GRAMS);
        return Decimal.of(
                new BigDecimal(grams.getNumerator()).divide(new BigDecimal(grams.getDenominator()), PLACES, mode));
    }

    private static ArrayNode fails(List<Fail> broken) {
        var fails = NODES.arrayNode();
        broken.forEach(fail -> {
            var node = NODES.objectNode().put("path", fail.path()).put("name", fail.name());
            JsonExport.put(node, "reaches", fail.reaches());
            JsonExport.put(node, "needs", fail.needs());
            node.put("unit", fail.unit().symbol());
            node.put("fixed", fail.fixed());
            fails.add(node);
        });
        return fails;
    }

    private static void grams(ObjectNode node, String name, @Nullable BigFraction kilograms) {
        JsonExport.put(node, name, kilograms == null ? null : kilograms.multiply(GRAMS));
    }
}
