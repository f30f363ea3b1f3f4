package panade.assemble.trial;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.RemarkLines;
import panade.bench.BatchSheet;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.domain.trial.Lever;
import panade.domain.trial.Response;
import panade.domain.trial.Trial.Measurement;
import panade.domain.trial.TrialSet;
import panade.experiment.Mixing;
import panade.experiment.MixingPlan;
import panade.experiment.Request;
import panade.label.Allergens;
import panade.quantity.Decimal;
import panade.quantity.Fractions;
import panade.quantity.Quantity;
import panade.result.trial.NextResult;
import panade.result.trial.NextResult.LeverRange;
import panade.result.trial.NextResult.Line;
import panade.result.trial.NextResult.Measured;
import panade.result.trial.NextResult.Need;

/** Makes the result of {@code next}. */
public final class NextResults {
    private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_EVEN);

    private static final int FIGURES = 3;

    private final TrialSet set;
    private final Brief brief;
    private final MixingPlan plan;

    private NextResults(TrialSet set, MixingPlan plan) {
        this.set = set;
        this.brief = set.brief();
        this.plan = plan;
    }

    /**
     * What to mix next.
     *
     * @param sure how sure a blend is to be
     * @param monthly what is made a month; null where that is not stated
     */
    public static NextResult of(
            TrialSet set, Request request, BigFraction sure, MixingPlan plan, @Nullable Quantity monthly) {
        return new NextResults(set, plan).result(request, sure, monthly);
    }

    private NextResult result(Request request, BigFraction sure, @Nullable Quantity monthly) {
        var together = rounded(plan.together());
        return new NextResult(
                plan.mixings().stream().map(this::mixing).toList(),
                IntStream.range(0, plan.levers().all().size())
                        .mapToObj(this::range)
                        .toList(),
                request.needs().stream()
                        .map(need -> new Need(
                                need.response().response().name(),
                                need.side().name().toLowerCase(Locale.ROOT),
                                need.number(),
                                need.response().response().unit()))
                        .toList(),
                sure,
                plan.blend().costPerKg(),
                together,
                rounded(plan.most()),
                together == null || monthly == null
                        ? null
                        : together.multiply(
                                monthly.base().bigDecimalValue(DIGITS.getPrecision(), RoundingMode.HALF_EVEN), DIGITS),
                plan.isDone(),
                plan.open(),
                request.seed(),
                RemarkLines.of(set.remarks()),
                set.title(),
                request.batch().text(),
                monthly == null ? null : monthly.text(),
                brief.currency(),
                plan.unweighed(),
                set.responses().stream().map(this::measured).toList(),
                allergens());
    }

    private static @Nullable BigDecimal rounded(@Nullable BigDecimal value) {
        return value == null ? null : value.round(DIGITS);
    }

    private NextResult.Mixing mixing(Mixing mixing) {
        var levers = new LinkedHashMap<String, BigFraction>();
        var settings = new LinkedHashMap<String, BigFraction>();
        for (int i = 0; i < mixing.levers().size(); i++) {
            var lever = plan.levers().all().get(i);
            var value = lever.unit().fromBase(mixing.levers().get(i));
            levers.put(lever.name(), value);
            if (lever instanceof Lever.OfProcess setting) {
                settings.put(setting.setting(), value);
            }
        }
        var sheet = mixing.sheet();
        return new NextResult.Mixing(
                mixing.code(),
                mixing.why().name().toLowerCase(Locale.ROOT),
                mixing.repeats(),
                levers,
                weighed(sheet),
                rounded(mixing.gain()),
                sheet.weighed().costPerKg(),
                sheet.lines().stream()
                        .filter(line -> line.weight().signum() > 0)
                        .map(line -> new Line(
                                title(line.use().stage()),
                                brief.set().ingredient(line.use().ingredient()).name(),
                                line.weight()))
                        .toList(),
                settings,
                sheet.fails().stream().map(BatchSheet.Fail::name).toList());
    }

    private String title(String stage) {
        return brief.stages().stream()
                .filter(each -> each.id().equals(stage))
                .map(Stage::title)
                .findFirst()
                .orElse(stage);
    }

    private static Map<String, Map<String, String>> weighed(BatchSheet sheet) {
        var stages = new LinkedHashMap<String, Map<String, String>>();
        sheet.lines().stream()
                .filter(line -> line.weight().signum() > 0)
                .forEach(line -> stages.computeIfAbsent(line.use().stage(), stage -> new LinkedHashMap<>())
                        .put(
                                line.use().ingredient(),
                                Decimal.significant(line.weight().multiply(1000), 12)
                                                .toPlainString() + " g"));
        return stages;
    }

    private LeverRange range(int place) {
        var lever = plan.levers().all().get(place);
        var values = plan.region().stream()
                .map(point -> lever.unit().fromBase(point.get(place)))
                .toList();
        return new LeverRange(
                lever.name(),
                lever.unit().symbol(),
                values.stream().reduce(values.get(0), Fractions::min),
                values.stream().reduce(values.get(0), Fractions::max));
    }

    /** As many figures as were written of one mixing so far. */
    private Measured measured(Response response) {
        var figures = set.trials().stream()
                .map(trial -> trial.measured().getOrDefault(response.name(), List.<Measurement>of()))
                .toList();
        var tasters = new TreeSet<String>();
        figures.stream()
                .flatMap(List::stream)
                .map(Measurement::by)
                .filter(by -> !by.isEmpty())
                .forEach(tasters::add);
        int most = figures.stream().mapToInt(List::size).max().orElse(FIGURES);
        return new Measured(response.name(), response.unit(), Math.max(1, most), List.copyOf(tasters));
    }

    private NextResult.Allergens allergens() {
        var blends = plan.mixings().stream().map(each -> each.sheet().weighed()).toList();
        var stated = new TreeSet<String>();
        var notKnown = new TreeSet<String>();
        Stream.concat(Stream.of(plan.blend()), blends.stream()).forEach(blend -> {
            stated.addAll(Allergens.stated(brief, blend));
            notKnown.addAll(Allergens.notKnown(brief, blend));
        });
        return new NextResult.Allergens(List.copyOf(stated), List.copyOf(notKnown));
    }
}
