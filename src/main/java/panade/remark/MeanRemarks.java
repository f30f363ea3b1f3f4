package panade.remark;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.compile.CompiledBrief;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.Measure.Part;
import panade.domain.origin.Remark;
import panade.quantity.Dimension;
import panade.quantity.Unit;
import panade.remark.Range.Ends;

/**
 * Remarks on scores of a part that are measured over the whole batch, where the part's own mean is meant nearly always.
 */
record MeanRemarks(Brief brief, CompiledBrief compiled, Range range) {

    List<Remark> all() {
        return brief.bounds().stream()
                .filter(bound -> !bound.isLearned())
                .filter(bound -> bound.per() == null && bound.of().unit().dimension() == Dimension.NUMBER)
                .filter(bound -> bound.of().parts().stream().anyMatch(this::isNarrowed))
                .map(bound -> Words.on(bound, text(bound)))
                .toList();
    }

    private boolean isNarrowed(Part part) {
        boolean scores = !part.properties().isEmpty();
        Set<String> all = brief.set().ingredients().keySet();
        return scores && (part.stage() != null || !part.ingredients().keySet().containsAll(all));
    }

    private String text(Bound bound) {
        var form = compiled.formOf(bound.of(), brief.composition());
        var mass = compiled.formOf(massOf(bound.of()), brief.composition());
        var without = compiled.rowsOf(bound.id());
        var name = bound.of().name();
        return "\"" + name + "\" within a part is measured over the whole batch, as what the part adds to it"
                + reach(range.of(form, without))
                + ". Where the mean of the part alone is meant, add \"per\" with the same words as under \"within\""
                + reach(mass.isZero() ? NOWHERE : range.ofRatio(form, mass, without)) + ".";
    }

    private static final Ends NOWHERE = new Ends(Optional.empty(), Optional.empty());

    private static String reach(Ends ends) {
        return ends.areKnown()
                ? ": under the other bounds it can be from "
                        + Words.number(ends.least().orElseThrow()) + " to "
                        + Words.number(ends.most().orElseThrow())
                : "";
    }

    private static Measure massOf(Measure of) {
        var parts = new ArrayList<Part>();
        of.parts().forEach(part -> {
            Map<String, BigFraction> ones = new HashMap<>();
            part.ingredients().keySet().forEach(id -> ones.put(id, BigFraction.ONE));
            parts.add(new Part(Map.of(), Map.copyOf(ones), part.stage()));
        });
        return new Measure(of.name(), Unit.PERCENT, parts);
    }
}
