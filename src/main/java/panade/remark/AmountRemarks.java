package panade.remark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.origin.Remark;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/** Remarks on weights of a component that are asked of the whole batch, where a portion of it was probably meant. */
final class AmountRemarks {
    private static final Unit PER_100G = Unit.of("mg/100g");

    /** Components are told per 100 g; a weight of one that is less than this of the batch is told of. */
    private static final BigFraction SMALL = BigFraction.of(1, 1000);

    private AmountRemarks() {}

    static List<Remark> of(Brief brief) {
        var remarks = new ArrayList<Remark>();
        for (var bound : brief.bounds()) {
            boolean isComponent = bound.of().parts().stream()
                    .anyMatch(part -> !part.properties().isEmpty());
            if (isComponent) {
                small(bound, brief).ifPresent(limit -> remarks.add(Words.on(bound, text(limit, bound, brief))));
            }
        }
        return remarks;
    }

    private static Optional<Quantity> small(Bound bound, Brief brief) {
        return Stream.of(Optional.ofNullable(bound.min()), Optional.ofNullable(bound.max()))
                .flatMap(Optional::stream)
                .filter(Bound::isAmount)
                .filter(limit -> limit.base().signum() > 0
                        && limit.base().divide(brief.batch().base()).compareTo(SMALL) < 0)
                .findFirst();
    }

    private static String text(Quantity limit, Bound bound, Brief brief) {
        var share = limit.base().divide(brief.batch().base());
        var serving = brief.practice().serving();
        var perServing = serving == null
                ? "\"" + limit.text() + "/serving\" with \"serving\": \"113 g\" in the brief"
                : "\"" + limit.text() + "/serving\"";
        return "\"" + limit.text() + "\" of " + bound.of().name() + " is asked of the whole batch of "
                + brief.batch().text() + ", that is " + Words.in(PER_100G, share)
                + ". For a limit a serving write " + perServing
                + "; for one per 100 g write it such as \"350 mg/100g\".";
    }
}
