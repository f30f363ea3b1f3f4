package panade.study;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;

/** What a blend would say on a label: a draft, for comparing. */
public final class LabelView {
    private LabelView() {}

    /** Label names in descending order by weight as added, same names summed (21 CFR 101.4(a)(1)). */
    public static List<String> statement(Brief brief, Blend blend) {
        Map<String, BigFraction> shares = new LinkedHashMap<>();
        for (var line : blend.lines()) {
            var label = brief.set().ingredient(line.use().ingredient()).label();
            shares.merge(label, line.share(), BigFraction::add);
        }
        return shares.entrySet().stream()
                .sorted(Map.Entry.<String, BigFraction>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Allergens that the blend's ingredients are said to carry. */
    public static Set<String> allergens(Brief brief, Blend blend) {
        var allergens = new TreeSet<String>();
        for (var line : blend.lines()) {
            var stated = brief.set().ingredient(line.use().ingredient()).allergens();
            if (stated != null) {
                allergens.addAll(stated);
            }
        }
        return allergens;
    }
}
