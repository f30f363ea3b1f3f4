package panade.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.compile.CompiledBrief;
import panade.compile.CompiledBrief.Source;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.domain.Use;
import panade.domain.purchase.OfferId;

/** Reads a blend off a point of the model. Each stage draws an ingredient's suppliers in the same proportion. */
final class BlendReader {
    private final Brief brief;
    private final Map<Use, BigFraction> used = new HashMap<>();
    private final Map<OfferId, BigFraction> bought = new HashMap<>();
    private final Map<String, BigFraction> totals = new HashMap<>();

    private BlendReader(Brief brief, CompiledBrief compiled, List<BigFraction> point) {
        this.brief = brief;
        for (int j = 0; j < compiled.columns().size(); j++) {
            var source = compiled.columns().get(j);
            used.merge(source.use(), point.get(j), BigFraction::add);
            bought.merge(source.offer().id(), point.get(j), BigFraction::add);
            totals.merge(source.use().ingredient(), point.get(j), BigFraction::add);
        }
    }

    static Blend blend(Brief brief, CompiledBrief compiled, List<BigFraction> point) {
        var reader = new BlendReader(brief, compiled, point);
        var lines = new ArrayList<Blend.Line>();
        compiled.columns().forEach(source -> reader.line(source, lines));
        lines.sort(reader.kitchenOrder());
        return new Blend(List.copyOf(lines), reader.weight());
    }

    private BigFraction weight() {
        var cooked = brief.practice().cookedWeight();
        if (!brief.practice().perCooked() || cooked == null) {
            return BigFraction.ONE;
        }
        var weight = BigFraction.ZERO;
        for (var each : used.entrySet()) {
            weight = weight.add(each.getValue().multiply(cooked.perKg(each.getKey(), brief.composition())));
        }
        return weight;
    }

    private void line(Source source, List<Blend.Line> lines) {
        var total = totals.getOrDefault(source.use().ingredient(), BigFraction.ZERO);
        if (total.signum() == 0) {
            return;
        }
        var drawn = bought.getOrDefault(source.offer().id(), BigFraction.ZERO).divide(total);
        var share = used.getOrDefault(source.use(), BigFraction.ZERO).multiply(drawn);
        if (share.signum() > 0) {
            var cost = share.multiply(brief.costPerKg(source.offer()));
            lines.add(new Blend.Line(source.use(), source.offer(), share, cost));
        }
    }

    /** Stage by stage, heaviest first, names in order among equals. */
    private Comparator<Blend.Line> kitchenOrder() {
        var stages = brief.stages().stream().map(Stage::id).toList();
        return Comparator.comparing(
                        (Blend.Line line) -> stages.indexOf(line.use().stage()))
                .thenComparing(Blend.Line::share, Comparator.reverseOrder())
                .thenComparing(line -> line.use().ingredient())
                .thenComparing(line -> line.offer().supplier());
    }
}
