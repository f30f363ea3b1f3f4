package panade.assemble.formula;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.assemble.MadeResults;
import panade.assemble.RemarkLines;
import panade.audit.Audit;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.label.Allergens;
import panade.label.LabelChange;
import panade.label.Statement;
import panade.result.formula.CompareResult;
import panade.result.formula.CompareResult.Item;
import panade.result.formula.CompareResult.Label;
import panade.result.formula.CompareResult.Measured;
import panade.result.formula.CompareResult.Status;
import panade.result.formula.MadeResult;

/** Makes the result of {@code compare}. */
public final class CompareResults {
    private final List<Compared> compared;
    private final List<Optional<MadeResult>> made;
    private final Brief first;

    private CompareResults(List<Compared> compared) {
        this.compared = compared;
        this.made = compared.stream().map(CompareResults::measured).toList();
        this.first = compared.get(0).brief();
    }

    /** Things side by side, the first of which the others are told against. */
    public static CompareResult of(List<Compared> compared) {
        return new CompareResults(List.copyOf(compared)).result();
    }

    private static Optional<MadeResult> measured(Compared one) {
        return Optional.ofNullable(one.blend()).map(blend -> MadeResults.measured(one.brief(), blend, one.unsold()));
    }

    private CompareResult result() {
        var rows = new SideBySide(compared, made);
        return new CompareResult(
                Status.COMPARED,
                IntStream.range(0, compared.size()).mapToObj(this::item).toList(),
                RemarkLines.of(
                        Brief.remarksOn(compared.stream().map(Compared::brief).toList())),
                first.batch().text(),
                rows.weights(),
                rows.bounds(),
                rows.holdings());
    }

    private Item item(int i) {
        var one = compared.get(i);
        var bounds = made.get(i).map(MadeResult::bounds).orElse(List.of());
        var blend = one.blend();
        return new Item(
                String.valueOf((char) ('A' + i)),
                one.title(),
                one.kind(),
                one.file(),
                made.get(i)
                        .map(each -> new Measured(
                                each.cost(), each.blend(), each.bounds(), each.properties(), each.unsold()))
                        .orElse(null),
                one.without(),
                change(i).orElse(null),
                blend == null ? List.of() : new Audit(one.brief(), blend).brokenRules(),
                blend == null ? null : label(one.brief(), blend),
                perKg(i).map(cost -> cost.multiply(first.batch().base())).orElse(null),
                bounds.size(),
                (int) bounds.stream().filter(CompareResults::isBroken).count(),
                (int) bounds.stream().filter(bound -> bound.met() == null).count());
    }

    private static boolean isBroken(MadeResult.Bound bound) {
        return Boolean.FALSE.equals(bound.met());
    }

    private Optional<BigFraction> perKg(int i) {
        return made.get(i).flatMap(each -> Optional.ofNullable(each.cost().perKg()));
    }

    private Optional<BigFraction> change(int i) {
        return compared.get(i).brief().currency().equals(first.currency())
                ? perKg(i).flatMap(cost -> perKg(0).map(cost::subtract))
                : Optional.empty();
    }

    private Label label(Brief brief, Blend blend) {
        var names = Statement.names(brief, blend);
        var before = compared.get(0).blend();
        var others = before == null ? names : Statement.names(first, before);
        return new Label(
                names,
                List.copyOf(Allergens.stated(brief, blend)),
                List.copyOf(Allergens.notKnown(brief, blend)),
                LabelChange.without(names, others),
                LabelChange.without(others, names),
                LabelChange.isReordered(names, others));
    }
}
