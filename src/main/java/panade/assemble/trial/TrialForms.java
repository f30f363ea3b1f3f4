package panade.assemble.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import panade.design.BlindCodes;
import panade.domain.trial.Lever;
import panade.domain.trial.Response;
import panade.domain.trial.Trial.Measurement;
import panade.domain.trial.TrialSet;
import panade.quantity.Decimal;
import panade.result.BatchResult;
import panade.result.BatchResult.Blank;

/** Makes what is filled in when a trial is made: as many figures, and of the same tasters, as in those before it. */
public final class TrialForms {
    private static final int CODES = 900;
    private static final long SEED = 1;

    private TrialForms() {}

    /** The form of a trial that is not among the others yet; the same code for the same name. */
    public static BatchResult.Trial of(String id, TrialSet set) {
        var codes = BlindCodes.draw(CODES, SEED);
        return new BatchResult.Trial(
                id,
                codes.get(Math.floorMod(id.hashCode(), CODES)),
                set.responses().stream()
                        .flatMap(response -> blanks(response, set).stream())
                        .toList(),
                set.responses().stream()
                        .flatMap(response -> response.levers().stream())
                        .filter(Lever.OfProcess.class::isInstance)
                        .map(lever -> ((Lever.OfProcess) lever).setting())
                        .distinct()
                        .toList());
    }

    private static List<Blank> blanks(Response response, TrialSet set) {
        var before = set.trials().stream()
                .map(trial -> trial.measured().getOrDefault(response.name(), List.of()))
                .toList();
        var tasters = new TreeSet<String>();
        before.forEach(figures -> figures.stream().map(Measurement::by).forEach(tasters::add));
        tasters.remove("");
        var blanks = new ArrayList<Blank>();
        tasters.forEach(taster -> blanks.add(blank(response, taster)));
        int pieces = before.stream().mapToInt(List::size).max().orElse(0);
        while (tasters.isEmpty() && blanks.size() < Math.max(1, pieces)) {
            blanks.add(blank(response, ""));
        }
        return blanks;
    }

    private static Blank blank(Response response, String taster) {
        return new Blank(response.name(), response.unit(), words(response.scale()), taster);
    }

    private static String words(Response.@Nullable Scale scale) {
        return scale == null
                ? ""
                : Decimal.significant(scale.least(), 6).toPlainString() + " to "
                        + Decimal.significant(scale.most(), 6).toPlainString();
    }
}
