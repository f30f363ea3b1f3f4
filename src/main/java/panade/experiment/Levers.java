package panade.experiment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.pantry.Composition;
import panade.domain.trial.Lever;
import panade.domain.trial.Response;
import panade.domain.trial.Trial;
import panade.domain.trial.TrialSet;
import panade.domain.trial.Weighed;
import panade.quantity.Decimal;

/**
 * Everything that some trials differ in, each once; a point has a value for each, in base units.
 *
 * @param all in the order in which the responses name them
 */
public record Levers(List<Lever> all) {
    private static final int DIGITS = 12;

    public Levers {
        all = List.copyOf(all);
    }

    /** The levers of all responses; two of one name that measure the same are one. */
    public static Levers of(TrialSet set) {
        var found = new LinkedHashMap<List<Object>, Lever>();
        set.responses().forEach(response -> response.levers().forEach(lever -> found.putIfAbsent(key(lever), lever)));
        return new Levers(List.copyOf(found.values()));
    }

    private static List<Object> key(Lever lever) {
        var setting = lever instanceof Lever.OfProcess process ? process.setting() : "";
        return List.of(lever.name(), lever.measures(), setting);
    }

    /** Where a trial was made; empty where it does not say every lever. */
    Optional<List<BigFraction>> at(Trial trial, Composition composition) {
        var values = new ArrayList<BigFraction>();
        for (var lever : all) {
            lever.value(trial.weighed(), trial.process(), composition).ifPresent(values::add);
        }
        return values.size() == all.size() ? Optional.of(values) : Optional.empty();
    }

    /** Where something was weighed, with its settings as at a point. */
    List<BigFraction> at(Weighed weighed, List<BigFraction> point, Composition composition) {
        var values = new ArrayList<BigFraction>();
        for (int i = 0; i < all.size(); i++) {
            values.add(all.get(i).value(weighed, Map.of(), composition).orElse(point.get(i)));
        }
        return values;
    }

    /** A point to twelve digits: corners of a brief's region have hundreds, and no scale shows the rest. */
    static List<BigFraction> rounded(List<BigFraction> point) {
        return point.stream()
                .map(value -> Decimal.of(Decimal.significant(value, DIGITS)))
                .toList();
    }

    /** As much of a point as a response follows, in the order of its own levers. */
    List<BigFraction> of(Response response, List<BigFraction> point) {
        var keys = all.stream().map(Levers::key).toList();
        return response.levers().stream()
                .map(lever -> point.get(keys.indexOf(key(lever))))
                .toList();
    }

    /** Whether a lever is a setting and no matter of the blend. */
    boolean isSetting(int lever) {
        return all.get(lever) instanceof Lever.OfProcess;
    }

    /** A lever that is so much of one thing for another; what blends can reach of such is not a region with corners. */
    public Optional<Lever> ratio() {
        return all.stream().filter(Lever.OfRatio.class::isInstance).findFirst();
    }
}
