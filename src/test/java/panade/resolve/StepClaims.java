package panade.resolve;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import tools.jackson.databind.JsonNode;

/** The sentences under "What holds the cost up", each step typed in as printed. */
final class StepClaims {
    private static final Pattern SENTENCE =
            Pattern.compile("- ((?:(?! - ).)+?), (at its least|at its most|fixed at) [^:]*: (.+?)\\.(?= - |$)");
    private static final Pattern HALF = Pattern.compile("(?:each )?([0-9.]+)\\S*(?: \\S+)? (less|more) (asked|allowed)"
            + " (?:would (cost|save) ([0-9.]+) USD/lb|(changes nothing)|(leaves no blend))");
    private static final BigFraction POUND = PlainReading.of(new BigDecimal("0.45359237"));

    private final TypedKitchen kitchen;
    private final BigFraction least;
    private final Tally tally;

    StepClaims(TypedKitchen kitchen, BigFraction least, Tally tally) {
        this.kitchen = kitchen;
        this.least = least;
        this.tally = tally;
    }

    /**
     * Checks a report.
     *
     * @param text what {@code blend} prints
     * @param bounds the bounds of its {@code --json}, which say where a name stands
     */
    void check(String text, JsonNode bounds) {
        var paths = new HashMap<String, String>();
        for (var bound : bounds) {
            var path = bound.get("path").asString();
            paths.merge(bound.get("name").asString(), path, (one, other) -> "");
        }
        int start = text.indexOf("What holds the cost up");
        int end = text.indexOf("Every bound");
        var part = start < 0 || end < start
                ? ""
                : text.substring(start, end)
                        .replaceAll("-{3,}", "")
                        .replaceAll("\\s+", " ")
                        .strip();
        var sentences = SENTENCE.matcher(part);
        while (sentences.find()) {
            sentence(sentences, paths);
        }
    }

    private void sentence(Matcher sentence, Map<String, String> paths) {
        var path = paths.getOrDefault(sentence.group(1), "");
        var side = sentence.group(2);
        var typed = side.equals("fixed at") ? path : path + (side.equals("at its least") ? "/min" : "/max");
        var number = TypedNumber.at(kitchen, typed);
        if (path.isEmpty() || number.isEmpty()) {
            tally.met("steps of what these tests do not type");
            return;
        }
        var halves = HALF.matcher(sentence.group(3));
        boolean isAny = false;
        while (halves.find()) {
            isAny = true;
            half(halves, number.get(), sentence.group());
        }
        if (!isAny) {
            tally.met("sentences without a step");
        }
    }

    private void half(Matcher half, TypedNumber number, String sentence) {
        var step = PlainReading.of(new BigDecimal(half.group(1)));
        var to = half.group(2).equals("less")
                ? number.value().subtract(step)
                : number.value().add(step);
        var cost = new PlainAnswer(number.typed(KitchenDraw.decimal(to, 15, RoundingMode.HALF_EVEN))).least();
        tally.claim("steps as printed", holds(half, cost), sentence + " for " + cost.map(Printed::text));
    }

    private boolean holds(Matcher half, Optional<BigFraction> cost) {
        if (half.group(7) != null || cost.isEmpty()) {
            return half.group(7) != null && cost.isEmpty();
        }
        var change = cost.get().subtract(least).multiply(POUND);
        if (half.group(6) != null) {
            return change.abs().subtract(Printed.NEAR).signum() <= 0;
        }
        var told = new BigDecimal(half.group(5));
        // two significant digits, a zero at the end dropped
        int places = 2 - (told.precision() - told.scale());
        var half1 = PlainReading.of(BigDecimal.valueOf(5, places + 1)).multiply(BigFraction.of(1001, 1000));
        var signed = PlainReading.of(told).multiply(half.group(4).equals("cost") ? 1 : -1);
        return change.subtract(signed).abs().subtract(half1).signum() <= 0;
    }
}
