package panade.report.blend;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.result.BlendResult.PropertyValue;

/** Tabulates what the blend holds; what is not known is named, never shown as nothing. */
public final class HoldingsTable {
    private static final List<Column> COLUMNS = List.of(
            new Column("Property", false), new Column("", false), new Column("Value", true), new Column("Unit", false));

    private HoldingsTable() {}

    /** The table. */
    public static List<Block> of(List<PropertyValue> properties) {
        var rows = new ArrayList<List<String>>();
        var unknown = new ArrayList<String>();
        for (var property : properties) {
            var value = property.value();
            if (value == null) {
                unknown.add(property.property());
            } else {
                rows.add(row(property, value));
            }
        }
        var blocks = new ArrayList<Block>();
        blocks.add(new Heading("What the blend holds"));
        blocks.add(new Table(COLUMNS, rows));
        if (rows.stream().anyMatch(row -> row.contains("ENERC"))) {
            blocks.add(new Paragraph(
                    "Energy (ENERC) is as the ingredient set counts it. A label counts by its law's own factors,"
                            + " so \"panade panel\" may print another figure and says why."));
        }
        if (!unknown.isEmpty()) {
            blocks.add(new Paragraph("Not known, because an ingredient in the blend does not state it: "
                    + String.join(", ", unknown) + "."));
        }
        return blocks;
    }

    private static List<String> row(PropertyValue property, BigFraction value) {
        return List.of(property.property(), property.title(), Figures.significant(value, 4), property.unit());
    }
}
