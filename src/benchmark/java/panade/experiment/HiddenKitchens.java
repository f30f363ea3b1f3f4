package panade.experiment;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.apache.commons.statistics.distribution.NormalDistribution;
import panade.bench.Scales;
import panade.document.Documents;
import panade.document.syntax.Reading;
import panade.domain.Side;
import panade.domain.Use;
import panade.domain.trial.Trial;
import panade.domain.trial.TrialSet;
import panade.domain.trial.Weighed;
import panade.learn.Fit;
import panade.learn.Form;
import panade.learn.LackOfFit.PureError;
import panade.learn.Observation;
import panade.learn.Prior;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.solver.ortools.OrToolsSolver;
import panade.trial.FittedResponse;

/**
 * How many mixings it takes until the blend that is told as 90 % sure is a good one, in kitchens whose truth is known
 * here and hidden there: gum, water and oil in a dough, and two responses that must reach a least, straight in every
 * other kitchen and in the others bent by a deviation of the noise at the corners. Three ways to choose mixings are
 * followed by the same fit, always straight, and the same promise. A good blend truly keeps both bounds in the mean and
 * costs at most 2 % more than the cheapest that keeps each in 90 % of batches. Invented kitchens.
 *
 * <p>Arguments: how many kitchens, and the seed of the first.
 */
public final class HiddenKitchens {
    private static final int MOST = 20;
    private static final int JUDGED = 10;
    private static final int BEGINNING = 6;
    private static final BigFraction SURE = BigFraction.of(9, 10);
    private static final double ASIDE = NormalDistribution.of(0, 1).inverseCumulativeProbability(0.9);
    private static final double[] LOW = {0.005, 0.25, 0.1};
    private static final double[] HIGH = {0.03, 0.45, 0.2};

    private static final List<String> LEVERS = List.of("gum", "water", "oil");

    private HiddenKitchens() {}

    private enum Way {
        GAIN,
        DESIGN,
        ONE_AT_A_TIME
    }

    /** Effects of the levers from -1 to 1, the bend, the noise and the bound of a response. */
    private record Truth(double[] effects, double bend, double noise, double least) {
        double at(double... place) {
            double sum = 0;
            for (int i = 0; i < place.length; i++) {
                sum += effects[i] * place[i] - bend * place[i] * place[i];
            }
            return sum;
        }
    }

    private record Kitchen(TrialSet set, Levers levers, List<Truth> truths, double[] prices, Random random) {
        double cost(double... shares) {
            double cost = prices[0];
            for (int i = 0; i < shares.length; i++) {
                cost += shares[i] * (prices[i + 1] - prices[0]);
            }
            return cost;
        }

        /** The least cost at which each bound is kept in 90 % of batches. */
        double cheapest() {
            double best = Double.MAX_VALUE;
            for (int i = 0; i < 101 * 101 * 101; i++) {
                double[] place = {-1 + i % 101 / 50.0, -1 + i / 101 % 101 / 50.0, -1 + i / 10_201 / 50.0};
                if (truths.stream().allMatch(truth -> truth.at(place) - ASIDE * truth.noise() >= truth.least())) {
                    best = Math.min(best, cost(share(place, 0), share(place, 1), share(place, 2)));
                }
            }
            return best;
        }
    }

    private static double share(double[] place, int lever) {
        return LOW[lever] + (place[lever] + 1) / 2 * (HIGH[lever] - LOW[lever]);
    }

    private static double[] place(List<BigFraction> point) {
        var place = new double[LOW.length];
        for (int i = 0; i < LOW.length; i++) {
            place[i] = 2 * (point.get(i).doubleValue() - LOW[i]) / (HIGH[i] - LOW[i]) - 1;
        }
        return place;
    }

    private static double between(Random random, double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private static Kitchen kitchen(Path folder, int number) throws IOException {
        var random = new Random(number);
        double[] prices = {between(random, 1.5, 4), between(random, 20, 60), 0.01, between(random, 1, 6)};
        Files.writeString(folder.resolve("set.json"), """
                {"ingredients": [{"id": "base", "values": {}}, {"id": "gum", "values": {}}, {"id": "water", "values": {}},
                 {"id": "oil", "values": {}}]}
                """);
        Files.writeString(
                folder.resolve("prices.csv"),
                String.format(
                        Locale.ROOT,
                        "ingredient,supplier,price,per%nbase,s,%.4f,kg%ngum,s,%.4f,kg%nwater,s,%.4f,kg%noil,s,%.4f,kg%n",
                        prices[0],
                        prices[1],
                        prices[2],
                        prices[3]));
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "dough", "ingredients": "set.json", "prices": ["prices.csv"], "batch": "10 kg", "bounds": [
                 {"ingredient": "gum", "min": "0.5 %", "max": "3 %"}, {"ingredient": "water", "min": "25 %", "max": "45 %"},
                 {"ingredient": "oil", "min": "10 %", "max": "20 %"}]}
                """);
        Files.writeString(folder.resolve("trials.json"), """
                {"title": "t", "brief": "brief.json", "responses": {"bite": {"unit": "g"}, "hold": {"unit": "g"}},
                 "levers": {"gum": {"ingredient": "gum"}, "water": {"ingredient": "water"}, "oil": {"ingredient": "oil"}},
                 "trials": [
                 {"id": "T1", "weighed": {"mix": {"gum": "1 g", "base": "99 g"}}, "measured": {"bite": 1, "hold": 1}}]}
                """);
        var reading = Documents.readTrials(folder.resolve("trials.json"));
        var set = ((Reading.Accepted<TrialSet>) reading).value();
        double[] place = random.doubles(LOW.length, -0.3, 0.5).toArray();
        var truths = new ArrayList<Truth>();
        for (int i = 0; i < 2; i++) {
            double[] effects = {between(random, 20, 60), -between(random, 10, 40), between(random, -30, 30)};
            double noise = between(random, 0.05, 0.2)
                    * Arrays.stream(effects).map(Math::abs).sum();
            double bend = number % 2 == 0 ? 0 : noise / LOW.length;
            double there = new Truth(effects, bend, noise, 0).at(place);
            truths.add(new Truth(effects, bend, noise, there - (ASIDE + between(random, 0, 1)) * noise));
        }
        return new Kitchen(set, Levers.of(set), truths, prices, random);
    }

    /** What came of one way in one kitchen: mixings until a good blend, and how often the judged promise breaks. */
    private record Outcome(int mixings, double broken, int bounds) {}

    private static Outcome follow(
            Planner planner, Kitchen kitchen, Way way, List<List<BigFraction>> region, long seed) {
        double cheapest = kitchen.cheapest();
        var noise = new Random(seed);
        var points = new ArrayList<List<BigFraction>>();
        var values = List.of(new ArrayList<BigFraction>(), new ArrayList<BigFraction>());
        Optional<SureBlend> promise = Optional.empty();
        int good = MOST + 1;
        double broken = 0;
        int bounds = 0;
        List<Need> needs = List.of();
        for (int made = 1; made <= MOST && (made <= JUDGED || good > MOST); made++) {
            var point = next(kitchen, way, region, points, needs, promise);
            points.add(point);
            for (int i = 0; i < 2; i++) {
                var truth = kitchen.truths().get(i);
                double value = truth.at(place(point)) + truth.noise() * noise.nextGaussian();
                values.get(i).add(Decimal.of(String.format(Locale.ROOT, "%.3f", value)));
            }
            if (made < BEGINNING) {
                continue;
            }
            needs = needs(kitchen, points, values);
            promise = needs.stream().allMatch(Need::isKnown)
                    ? SureBlend.of(planner, kitchen.set().brief(), kitchen.levers(), needs, region.get(0))
                            .found()
                    : Optional.empty();
            if (promise.isPresent()) {
                var place = place(promise.get().point());
                double cost = promise.get().proved().blend().costPerKg().doubleValue();
                boolean keeps = kitchen.truths().stream().allMatch(truth -> truth.at(place) >= truth.least());
                good = good > MOST && keeps && cost <= 1.02 * cheapest ? made : good;
                for (int i = 0; made == JUDGED && i < 2; i++) {
                    if (promise.get().prices().get(i).signum() > 0) {
                        var truth = kitchen.truths().get(i);
                        broken += NormalDistribution.of(truth.at(place), truth.noise())
                                .cumulativeProbability(truth.least());
                        bounds++;
                    }
                }
            }
        }
        return new Outcome(good, broken, bounds);
    }

    private static List<Need> needs(
            Kitchen kitchen, List<List<BigFraction>> points, List<ArrayList<BigFraction>> values) {
        var needs = new ArrayList<Need>();
        for (int i = 0; i < 2; i++) {
            var observations = new ArrayList<Observation>();
            for (int k = 0; k < points.size(); k++) {
                observations.add(Observation.of(points.get(k), values.get(i).get(k)));
            }
            var response = kitchen.set().responses().get(i);
            var terms = Form.LINEAR.terms(LEVERS.size(), true, Set.of());
            var fitted = new FittedResponse(
                    response,
                    points.size(),
                    Form.LINEAR,
                    false,
                    true,
                    terms,
                    Fit.of(terms, observations, Prior.none(terms.size())),
                    PureError.of(observations),
                    SURE,
                    List.of(),
                    points.get(0),
                    Optional.empty(),
                    List.of());
            var least = Decimal.of(
                    String.format(Locale.ROOT, "%.4f", kitchen.truths().get(i).least()));
            needs.add(new Need(fitted, Side.MIN, least));
        }
        return needs;
    }

    private static List<BigFraction> next(
            Kitchen kitchen,
            Way way,
            List<List<BigFraction>> region,
            List<List<BigFraction>> points,
            List<Need> needs,
            Optional<SureBlend> promise) {
        int made = points.size();
        if (way == Way.ONE_AT_A_TIME) {
            // the middle first, then each lever at its least and at its most, and so on again
            var turn = new double[LOW.length];
            int moved = made % (2 * LOW.length + 1) - 1;
            if (moved >= 0) {
                turn[moved / 2] = moved % 2 == 0 ? -1 : 1;
            }
            return IntStream.range(0, turn.length)
                    .mapToObj(lever -> decimal(share(turn, lever)))
                    .toList();
        }
        boolean paying = way == Way.GAIN && made >= BEGINNING && promise.isPresent();
        if (paying && made % 2 == 0) {
            return promise.get().point();
        }
        var trials = new ArrayList<Trial>();
        points.forEach(point -> trials.add(new Trial(
                "T" + trials.size(),
                weighed(point),
                Map.of(),
                Map.of(),
                "",
                "",
                "",
                kitchen.set().responses().get(0).origin())));
        var known = kitchen.set();
        var set = new TrialSet(known.title(), known.file(), known.brief(), known.responses(), trials, List.of());
        var gram = Quantity.parse("1 g").orElseThrow();
        var request =
                new Request(1, gram, new Scales(gram, null, BigFraction.ZERO), List.of(), needs, BigFraction.ZERO, 1);
        var candidates = new ArrayList<>(region);
        promise.ifPresent(blend -> candidates.add(blend.point()));
        var worth = paying ? Optional.of(new Worth(kitchen.levers(), needs, promise.get())) : Optional.<Worth>empty();
        return new Choice(kitchen.levers(), set, request, worth)
                .among(way == Way.DESIGN ? region : candidates, List.of(), 1)
                .get(0)
                .point();
    }

    private static BigFraction decimal(double value) {
        return Decimal.of(String.format(Locale.ROOT, "%.6f", value));
    }

    private static Weighed weighed(List<BigFraction> point) {
        var weights = new LinkedHashMap<Use, BigFraction>();
        var base = BigFraction.ONE;
        for (int i = 0; i < point.size(); i++) {
            weights.put(new Use(LEVERS.get(i), "mix"), point.get(i));
            base = base.subtract(point.get(i));
        }
        weights.put(new Use("base", "mix"), base);
        return new Weighed(weights);
    }

    public static void main(String[] words) {
        int kitchens = Integer.parseInt(words[0]);
        int first = Integer.parseInt(words[1]);
        var planner = new Planner(new OrToolsSolver());
        var outcomes = new Outcome[Way.values().length][kitchens];
        IntStream.range(0, kitchens).parallel().forEach(i -> {
            try {
                var kitchen = kitchen(Files.createTempDirectory("kitchen"), first + i);
                var region = LeverRegion.candidates(planner, kitchen.set().brief(), kitchen.set(), kitchen.levers());
                for (var way : Way.values()) {
                    outcomes[way.ordinal()][i] = follow(planner, kitchen, way, region, first + i);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        print("straight", outcomes, first, kitchens, 0);
        print("bent", outcomes, first, kitchens, 1);
    }

    private static void print(String kind, Outcome[][] outcomes, int first, int made, int rest) {
        var some = IntStream.range(0, made).filter(i -> (first + i) % 2 == rest).toArray();
        int kitchens = some.length;
        System.out.println(kitchens + " " + kind + " kitchens, at most " + MOST + " mixings");
        for (var way : Way.values()) {
            var all = Arrays.stream(some)
                    .mapToObj(i -> outcomes[way.ordinal()][i])
                    .toArray(Outcome[]::new);
            var mixings = Arrays.stream(all).mapToInt(Outcome::mixings).sorted().toArray();
            long reached = Arrays.stream(mixings).filter(count -> count <= MOST).count();
            int bounds = Arrays.stream(all).mapToInt(Outcome::bounds).sum();
            double share = Arrays.stream(all).mapToDouble(Outcome::broken).sum() / bounds;
            double spread = 0;
            for (var each : all) {
                spread += Math.pow(each.broken() - share * each.bounds(), 2);
            }
            System.out.printf(
                    Locale.ROOT,
                    "  %-14s median %d mixings (quarters %d and %d), reached by %d; after %d mixings %d bounds held the"
                            + " cost up and %.1f %% of next batches break one, give or take %.1f (95 %%)%n",
                    way.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    mixings[kitchens / 2],
                    mixings[kitchens / 4],
                    mixings[3 * kitchens / 4],
                    reached,
                    JUDGED,
                    bounds,
                    100 * share,
                    196 * Math.sqrt(spread) / bounds);
        }
    }
}
