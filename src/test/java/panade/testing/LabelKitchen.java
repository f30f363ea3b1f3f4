package panade.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Use;
import panade.label.Panel;
import panade.label.PanelRequest;
import panade.quantity.Decimal;

/** A pantry written as a user would, and blends of it in parts by weight. */
public record LabelKitchen(Brief brief) {

    /**
     * A kitchen.
     *
     * @param ingredients each as an object of the ingredient set
     * @param more further fields of the brief, such as {@code "serving": "100 g",}
     */
    public static LabelKitchen of(Path folder, List<String> ingredients, String more) throws IOException {
        Files.writeString(folder.resolve("set.json"), "{\"ingredients\": [" + String.join(",\n", ingredients) + "]}");
        var prices = new StringBuilder("ingredient,supplier,price,per\n");
        ingredients.forEach(each -> prices.append(each.replaceAll("(?s).*?\"id\": \"([^\"]*)\".*", "$1"))
                .append(",anyone,1,kg\n"));
        Files.writeString(folder.resolve("prices.csv"), prices);
        Files.writeString(
                folder.resolve("brief.json"),
                "{\"title\": \"test\", " + more
                        + "\"ingredients\": \"set.json\", \"prices\": [\"prices.csv\"], \"batch\": \"1 kg\"}");
        var reading = Documents.readBrief(folder.resolve("brief.json"), Overrides.NONE);
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return new LabelKitchen(((Reading.Accepted<Brief>) reading).value());
    }

    /** A blend by parts of weight. */
    public Blend blend(Map<String, String> parts) {
        var total = parts.values().stream().map(Decimal::of).reduce(BigFraction.ZERO, BigFraction::add);
        var lines = new ArrayList<Blend.Line>();
        parts.forEach((id, part) -> lines.add(new Blend.Line(
                new Use(id, "mix"), brief.offersFor(id).get(0), Decimal.of(part).divide(total), BigFraction.ZERO)));
        return new Blend(lines, BigFraction.ONE);
    }

    /** The label of a blend. */
    public Panel panel(Map<String, String> parts, PanelRequest request) {
        return Panel.of(brief, blend(parts), request);
    }

    /** A line of a label. */
    public static Panel.Row row(Panel panel, String id) {
        return panel.rows().stream()
                .filter(row -> row.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
