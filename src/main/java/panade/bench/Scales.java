package panade.bench;

import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.quantity.Quantity;

/**
 * What a batch is weighed on.
 *
 * @param step resolution of the scale that most is weighed on
 * @param fine resolution of a finer scale for small weights; null when there is none
 * @param below kilograms under which the finer scale is used
 */
public record Scales(Quantity step, @Nullable Quantity fine, BigFraction below) {
    /** Steps of the coarse scale that make up a weight which need not go on the finer one: five per cent at most. */
    public static final int STEPS = 20;

    private static final Quantity A_GRAM = Quantity.parse("1 g").orElseThrow();

    /** The scale that a brief states, or one that shows a gram. */
    public static Scales stated(Brief brief) {
        var own = brief.practice().weighing();
        return new Scales(own == null ? A_GRAM : own, null, BigFraction.ZERO);
    }

    /** The resolution at which a weight in a stage is read; a scale named for the stage goes first. */
    public Quantity stepFor(Stage stage, BigFraction kilograms) {
        if (fine != null && kilograms.compareTo(below) < 0) {
            return fine;
        }
        var own = stage.weighing();
        return own == null ? step : own;
    }

    /** The step of a scale on which not even the whole batch shows; empty where there is none such. */
    public Optional<Quantity> tooCoarse(Brief brief) {
        return Stream.concat(
                        Stream.of(step, fine == null ? step : fine),
                        brief.stages().stream().flatMap(stage -> Stream.ofNullable(stage.weighing())))
                .filter(each -> brief.batch().base().compareTo(each.base()) < 0)
                .findFirst();
    }
}
