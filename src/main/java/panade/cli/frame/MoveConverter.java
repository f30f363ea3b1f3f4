package panade.cli.frame;

import panade.quantity.Dimension;
import panade.quantity.Quantity;
import picocli.CommandLine.ITypeConverter;

/** Reads how far a weight may move: a weight, or a share of it. */
public final class MoveConverter implements ITypeConverter<Quantity> {
    @Override
    public Quantity convert(String text) {
        return Quantity.parse(text)
                .filter(most -> most.base().signum() >= 0)
                .filter(most ->
                        most.unit().dimension() == Dimension.MASS || most.unit().dimension() == Dimension.SHARE)
                .orElseThrow(() -> new UnreadableOption("expected a share or a weight, such as \"5 %\" or \"2 g\"."));
    }
}
