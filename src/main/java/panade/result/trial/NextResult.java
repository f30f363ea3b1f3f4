package panade.result.trial;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.RemarkLine;

/**
 * What to mix next.
 *
 * @param trials in the order in which to make them
 * @param levers what they differ in
 * @param needs what was asked of what is measured
 * @param sure how sure a blend is to be of that, as a share
 * @param costPerKg of the cheapest blend that is, or of the cheapest blend where nothing is asked
 * @param together money per kilogram that all of them could free; null where that is not known
 * @param most money per kilogram that the best single one could free; null likewise
 * @param perMonth money a month that all of them could free; null where no amount is stated either
 * @param done whether none could free enough to be worth making
 * @param open why gains are not known; null where they are
 * @param seed that gives the same again
 * @param remarks on the documents
 * @param title of the trials
 * @param batch weight of one mixing, as written
 * @param monthly what is made a month, as written; null where that is not stated
 * @param currency empty where none is stated
 * @param unweighed how many points were passed over since the scale is too coarse there
 */
public record NextResult(
        List<Mixing> trials,
        List<LeverRange> levers,
        List<Need> needs,
        BigFraction sure,
        BigFraction costPerKg,
        @Nullable BigDecimal together,
        @Nullable BigDecimal most,
        @Nullable BigDecimal perMonth,
        boolean done,
        @Nullable String open,
        long seed,
        List<RemarkLine> remarks,
        @JsonIgnore String title,
        @JsonIgnore String batch,
        @JsonIgnore @Nullable String monthly,
        @JsonIgnore String currency,
        @JsonIgnore int unweighed,
        @JsonIgnore List<Measured> measured,
        @JsonIgnore Allergens allergens) {
    public NextResult {
        trials = List.copyOf(trials);
        levers = List.copyOf(levers);
        needs = List.copyOf(needs);
        remarks = List.copyOf(remarks);
        measured = List.copyOf(measured);
    }

    /**
     * One mixing.
     *
     * @param code what stands on it
     * @param why design, gain, repeat or confirm
     * @param repeats the code of the mixing that it makes again; null where it makes none again
     * @param levers by name, in the unit of the lever
     * @param weighed grams by stage and ingredient, as a document of trials takes them
     * @param gainPerKg money per kilogram that it alone could free; null where that is not known
     * @param lines what is weighed, in order
     * @param settings how it is made, by the lever's name
     * @param broken names of bounds that its weights break; empty unless no scale that was tried could keep them
     */
    public record Mixing(
            int code,
            String why,
            @Nullable Integer repeats,
            Map<String, BigFraction> levers,
            Map<String, Map<String, String>> weighed,
            @Nullable BigDecimal gainPerKg,
            BigFraction costPerKg,
            @JsonIgnore List<Line> lines,
            @JsonIgnore Map<String, BigFraction> settings,
            List<String> broken) {
        public Mixing {
            lines = List.copyOf(lines);
            broken = List.copyOf(broken);
        }
    }

    /** A line of a bench sheet. */
    public record Line(String stage, String name, BigFraction kilograms) {}

    /**
     * What a lever can be.
     *
     * @param unit of the numbers; empty for plain ones
     * @param least that the brief allows, or of a setting that was tried
     */
    public record LeverRange(String name, String unit, BigFraction least, BigFraction most) {}

    /** What was asked of a response. */
    public record Need(String response, String side, BigFraction number, String unit) {}

    /**
     * What is to be measured.
     *
     * @param unit as the document writes it; empty for scores
     * @param figures how many of each mixing
     * @param tasters who score; empty where nobody tastes
     */
    public record Measured(String name, String unit, int figures, List<String> tasters) {
        public Measured {
            tasters = List.copyOf(tasters);
        }
    }

    /** Allergens stated of anything that is weighed, and names of ingredients of which nobody states them. */
    public record Allergens(List<String> stated, List<String> notKnown) {
        public Allergens {
            stated = List.copyOf(stated);
            notKnown = List.copyOf(notKnown);
        }
    }
}
