package panade.cli.frame;

import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.Spelling;
import picocli.CommandLine.ITypeConverter;

/** Reads a weight above zero. */
public abstract sealed class WeightConverter implements ITypeConverter<Quantity> {
    private final String example;

    private WeightConverter(String example) {
        this.example = example;
    }

    @Override
    public final Quantity convert(String text) {
        return Quantity.parse(text)
                .filter(weight -> weight.unit().dimension() == Dimension.MASS
                        && weight.base().signum() > 0)
                .orElseThrow(() -> new UnreadableOption("expected a weight above zero, such as " + example + "."
                        + Spelling.advice(text).map(advice -> " " + advice).orElse("")));
    }

    /** A serving. */
    public static final class OfServing extends WeightConverter {
        public OfServing() {
            super("113g");
        }
    }

    /** What a package holds. */
    public static final class OfPack extends WeightConverter {
        public OfPack() {
            super("1lb");
        }
    }

    /** A step of a scale. */
    public static final class OfScale extends WeightConverter {
        public OfScale() {
            super("0.1g");
        }
    }

    /** What is made. */
    public static final class OfBatch extends WeightConverter {
        public OfBatch() {
            super("20lb");
        }
    }
}
