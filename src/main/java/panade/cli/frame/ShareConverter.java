package panade.cli.frame;

import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.label.PanelRequest;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import picocli.CommandLine.ITypeConverter;

/** Reads a share. */
public abstract sealed class ShareConverter implements ITypeConverter<Quantity> {
    private final Predicate<BigFraction> possible;
    private final String expected;

    private ShareConverter(Predicate<BigFraction> possible, String expected) {
        this.possible = possible;
        this.expected = expected;
    }

    @Override
    public final Quantity convert(String text) {
        return Quantity.parse(text)
                .filter(share -> share.unit().dimension() == Dimension.SHARE)
                .filter(share -> possible.test(share.base()))
                .orElseThrow(() -> new UnreadableOption("expected " + expected));
    }

    /** By how much something may be dearer. */
    public static final class OfCost extends ShareConverter {
        public OfCost() {
            super(share -> share.signum() >= 0, "a share, such as \"1 %\".");
        }
    }

    /** At which share names may stand at the end of a statement. */
    public static final class OfTail extends ShareConverter {
        public OfTail() {
            super(PanelRequest.TAILS::contains, "2%, 1.5%, 1% or 0.5%.");
        }
    }

    /** How sure something is to be. */
    public static final class OfSure extends ShareConverter {
        public OfSure() {
            super(
                    share -> share.compareTo(BigFraction.of(1, 2)) >= 0 && share.compareTo(BigFraction.ONE) < 0,
                    "a share from 50 % to below 100 %, such as \"90 %\".");
        }
    }

    /** How often a test may find what is not there. */
    public static final class OfRisk extends ShareConverter {
        public OfRisk() {
            super(
                    share -> share.signum() > 0 && share.compareTo(BigFraction.of(1, 2)) < 0,
                    "a share above 0 and below 50 %, such as \"5 %\".");
        }
    }
}
