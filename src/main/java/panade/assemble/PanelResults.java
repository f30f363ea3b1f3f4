package panade.assemble;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.origin.Remark;
import panade.label.Caution;
import panade.label.Panel;
import panade.label.nutrition.ProteinQuality;
import panade.result.PanelResult;
import panade.result.PanelResult.Allergens;
import panade.result.PanelResult.Carried;
import panade.result.PanelResult.Compliance;
import panade.result.PanelResult.Format;
import panade.result.PanelResult.Missing;
import panade.result.PanelResult.Name;
import panade.result.PanelResult.Row;
import panade.result.PanelResult.Score;
import panade.result.PanelResult.Sourced;
import panade.result.PanelResult.Statement;
import panade.result.PanelResult.Unclear;

/** Makes the result of {@code panel}. */
public final class PanelResults {
    private static final BigFraction GRAMS = BigFraction.of(1000);

    private final Panel panel;

    private PanelResults(Panel panel) {
        this.panel = panel;
    }

    /**
     * The draft of a label.
     *
     * @param subject which blend it is of, in a sentence
     * @param remarks on the brief that the blend was made from
     */
    public static PanelResult of(Panel panel, String subject, List<Remark> remarks) {
        return new PanelResults(panel).result(subject, remarks);
    }

    private PanelResult result(String subject, List<Remark> remarks) {
        var format = panel.request().format();
        var serving = panel.serving();
        return new PanelResult(
                true,
                Format.valueOf(format.name()),
                serving == null ? null : panel.servingGrams() + " g",
                filled(panel.servings()),
                panel.rows().stream().map(this::row).toList(),
                statement(),
                allergens(),
                Stream.of(panel.protein().pdcaas(), panel.protein().diaas())
                        .map(PanelResults::score)
                        .toList(),
                panel.compliance().stream().map(PanelResults::compliance).toList(),
                panel.notes(),
                sourced(panel.stillNeeded()),
                sourced(panel.cautions()),
                RemarkLines.of(remarks),
                panel.title(),
                format.law(),
                format.percent(),
                subject,
                serving == null ? null : serving.base().multiply(GRAMS));
    }

    private static @Nullable String filled(String text) {
        return text.isEmpty() ? null : text;
    }

    private Row row(Panel.Row row) {
        return new Row(
                row.id(),
                row.name(),
                row.level(),
                row.unit(),
                row.per100g(),
                row.per100gText(),
                row.perServing(),
                row.perServingText(),
                filled(row.percent()),
                row.unknownFor(),
                row.unknownFor().size() == panel.ingredients());
    }

    private Statement statement() {
        var statement = panel.statement();
        return new Statement(
                statement.text(),
                statement.names().stream()
                        .map(name -> new Name(name.label(), name.share(), name.ingredients(), name.words()))
                        .toList());
    }

    private Allergens allergens() {
        var allergens = panel.allergens();
        return new Allergens(
                allergens.contains(),
                carried(allergens.named()),
                carried(allergens.others()),
                allergens.unknownFor(),
                allergens.strange().stream()
                        .map(each ->
                                new Unclear(each.ingredient(), each.word(), each.place(), each.what(), each.advice()))
                        .toList(),
                allergens.sentence());
    }

    private static List<Carried> carried(List<panade.label.Allergens.Carried> allergens) {
        return allergens.stream()
                .map(each -> new Carried(each.name(), each.carriers()))
                .toList();
    }

    private static Score score(ProteinQuality.Score score) {
        return new Score(
                score.name(),
                score.cut(),
                score.value(),
                filled(score.limiting()),
                score.atLeast(),
                score.missing().stream()
                        .map(missing -> new Missing(missing.ingredient(), missing.values()))
                        .toList(),
                score.pattern().source(),
                score.pattern().name());
    }

    private static Compliance compliance(panade.label.Compliance line) {
        return new Compliance(
                line.id(),
                line.name(),
                line.declared(),
                line.low(),
                line.high(),
                line.expected(),
                line.spread(),
                line.room(),
                line.unknownFor(),
                line.source(),
                line.distance().signum() < 0);
    }

    private static List<Sourced> sourced(List<Caution> cautions) {
        return cautions.stream()
                .map(caution -> new Sourced(caution.text(), caution.source()))
                .toList();
    }
}
