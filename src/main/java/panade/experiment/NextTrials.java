package panade.experiment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.bench.BatchSheet;
import panade.bench.Weighing;
import panade.certify.Decision;
import panade.design.BlindCodes;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Use;
import panade.domain.trial.TrialSet;
import panade.domain.trial.Weighed;
import panade.experiment.Mixing.Why;
import panade.plan.Planner;
import panade.quantity.Decimal;

/** Plans the next mixings of a product. */
public final class NextTrials {
    /** From so many mixings on one of them confirms the cheapest blend. */
    private static final int CONFIRMING = 2;

    /** From so many on that one is mixed twice. */
    private static final int REPEATING = 4;

    private final Planner planner;
    private final TrialSet set;
    private final Request request;
    private final Brief brief;
    private final Levers levers;
    private final Map<List<BigFraction>, Optional<BatchSheet>> sheets = new LinkedHashMap<>();

    private NextTrials(Planner planner, TrialSet set, Request request) {
        this.planner = planner;
        this.set = set;
        this.request = request;
        this.brief = planner.keepingLabel(set.brief());
        this.levers = Levers.of(set);
    }

    /**
     * What to mix next. The brief must have a blend, and no lever may be a ratio.
     *
     * @throws panade.model.Unproved where the region of the levers cannot be settled
     */
    public static MixingPlan of(Planner planner, TrialSet set, Request request) {
        return new NextTrials(planner, set, request).plan();
    }

    private MixingPlan plan() {
        var region = LeverRegion.candidates(planner, brief, set, levers);
        var middle = middle(region);
        var known = request.needs().stream().allMatch(Need::isKnown) ? request.needs() : List.<Need>of();
        var sure = SureBlend.of(planner, brief, levers, known, middle);
        var cheapest = sure.found()
                .orElseGet(() ->
                        SureBlend.of(planner, brief, levers, List.of(), middle).orElseThrow());
        var worth = sure.found().filter(found -> !known.isEmpty()).map(found -> new Worth(levers, known, found));
        var candidates = new LinkedHashSet<>(region);
        candidates.add(cheapest.point());
        var most = worth.map(each -> candidates.stream()
                .map(point -> each.of(List.of(point)))
                .max(BigDecimal::compareTo)
                .orElseThrow());
        boolean done = most.filter(gain -> Decimal.of(gain).compareTo(request.worthwhile()) < 0)
                .isPresent();
        var points = done ? List.<Choice.Chosen>of() : chosen(new ArrayList<>(candidates), cheapest, worth);
        var mixings = mixings(points, cheapest, worth.orElse(null), done);
        return new MixingPlan(
                levers,
                mixings,
                region,
                cheapest.proved().blend(),
                worth.map(each -> each.of(mixings.stream().map(Mixing::levers).toList()))
                        .orElse(null),
                most.orElse(null),
                done,
                (int) sheets.values().stream().filter(Optional::isEmpty).count(),
                worth.isPresent() ? null : open(known, sure));
    }

    /** Where settings stand: in the middle of what was tried. */
    private List<BigFraction> middle(List<List<BigFraction>> region) {
        var made = set.trials().stream()
                .flatMap(trial -> levers.at(trial, brief.composition()).stream())
                .toList();
        var points = made.isEmpty() ? region : made;
        var middle = new ArrayList<BigFraction>();
        for (int i = 0; i < levers.all().size(); i++) {
            int lever = i;
            middle.add(points.stream()
                    .map(point -> point.get(lever))
                    .reduce(BigFraction.ZERO, BigFraction::add)
                    .divide(points.size()));
        }
        return middle;
    }

    private String open(List<Need> known, Decision<SureBlend> sure) {
        if (request.needs().isEmpty()) {
            return "What a mixing is worth is not known, since nothing is asked of what is measured: say it with --need.";
        }
        if (known.isEmpty()) {
            return "What a mixing is worth is not known yet: the trials do not say enough of what is asked for, or its form"
                    + " is bent.";
        }
        return sure.fold(
                found -> "",
                () -> "No blend of the brief is sure enough of what is asked, so what a mixing is worth is not known.",
                reason -> "What a mixing is worth was not decided: " + reason + ".");
    }

    /** Points that can be weighed so that every bound is kept. */
    private List<Choice.Chosen> chosen(List<List<BigFraction>> candidates, SureBlend cheapest, Optional<Worth> worth) {
        int fixed = fixed();
        var confirmed = Collections.nCopies(fixed, cheapest.point());
        var choice = new Choice(levers, set, request, worth);
        while (!candidates.isEmpty()) {
            var chosen = choice.among(candidates, confirmed, request.trials() - fixed);
            var failed = chosen.stream()
                    .map(Choice.Chosen::point)
                    .filter(point -> sheet(point, cheapest).isEmpty())
                    .toList();
            if (failed.isEmpty()) {
                return chosen;
            }
            candidates.removeAll(failed);
        }
        return List.of();
    }

    private int fixed() {
        return request.trials() < CONFIRMING ? 0 : request.trials() < REPEATING ? 1 : 2;
    }

    private Optional<BatchSheet> sheet(List<BigFraction> point, SureBlend cheapest) {
        return sheets.computeIfAbsent(point, each -> {
            var blend = each.equals(cheapest.point())
                    ? Optional.of(cheapest.proved().blend())
                    : planner.cheapest(LeverBounds.at(brief, levers, each)).found();
            return blend.map(this::weighed).filter(BatchSheet::isMet);
        });
    }

    private BatchSheet weighed(Blend blend) {
        return Weighing.of(planner, LeverBounds.inBatch(brief, request.batch()), blend, request.scales());
    }

    private List<Mixing> mixings(List<Choice.Chosen> points, SureBlend cheapest, @Nullable Worth worth, boolean done) {
        var all = new ArrayList<>(points);
        int fixed = done ? 1 : fixed();
        for (int i = 0; i < fixed; i++) {
            all.add(new Choice.Chosen(cheapest.point(), i == 0 ? Why.CONFIRM : Why.REPEAT));
        }
        var codes = BlindCodes.draw(all.size(), request.seed());
        var confirming = points.size() < all.size() ? codes.get(points.size()) : null;
        var mixings = new ArrayList<Mixing>();
        for (int i = 0; i < all.size(); i++) {
            var why = all.get(i).why();
            var point = all.get(i).point();
            var sheet = sheet(point, cheapest)
                    .orElseGet(() -> weighed(cheapest.proved().blend()));
            var made = levers.at(weighed(sheet), point, brief.composition());
            mixings.add(new Mixing(
                    codes.get(i),
                    why,
                    why == Why.REPEAT ? confirming : null,
                    made,
                    sheet,
                    worth == null ? null : worth.of(List.of(made))));
        }
        Collections.shuffle(mixings, new Random(request.seed()));
        return mixings;
    }

    private static Weighed weighed(BatchSheet sheet) {
        var kilograms = new LinkedHashMap<Use, BigFraction>();
        sheet.lines().forEach(line -> kilograms.put(line.use(), line.weight()));
        return new Weighed(kilograms);
    }
}
