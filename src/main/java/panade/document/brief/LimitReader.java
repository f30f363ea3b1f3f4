package panade.document.brief;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.Amounts;
import panade.document.syntax.Expect;
import panade.document.syntax.Node;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.Bound;
import panade.quantity.Decimal;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/** Reads the floor and the ceiling of a bound in the form that suits what is bounded. */
record LimitReader(
        Problems problems,
        @Nullable Quantity batch,
        @Nullable Quantity serving) {
    private static final String A_SERVING = "/serving";

    /** A floor, a ceiling, or both. */
    record Limits(@Nullable Quantity min, @Nullable Quantity max) {}

    Limits read(ObjectNode bound, LimitForm form) {
        var min = bound.field("min").flatMap(field -> limit(field.value(), form));
        var max = bound.field("max").flatMap(field -> limit(field.value(), form));
        if (bound.field("min").isEmpty() && bound.field("max").isEmpty()) {
            problems.add(bound.origin(), "Neither \"min\" nor \"max\" is given", "Expected at least one of them.");
        }
        if (min.isPresent() && max.isPresent() && isAbove(min.get(), max.get())) {
            var most = bound.field("max").orElseThrow().value();
            boolean typed = most.origin().line() == 0; // on the command line, which is what can be mended
            tellAbove(typed ? most : bound.field("min").orElseThrow().value(), min.get(), max.get());
        }
        return new Limits(min.orElse(null), max.orElse(null));
    }

    private Optional<Quantity> limit(Node node, LimitForm form) {
        if (node instanceof TextNode text && text.text().strip().endsWith(A_SERVING)) {
            return perServing(text, form)
                    .filter(found -> isOfTheForm(node, found, form))
                    .filter(found -> isInRange(node, found, form));
        }
        var quantity = quantity(node, form);
        if (quantity.isEmpty()) {
            tellNoNumber(node, form);
            return Optional.empty();
        }
        return quantity.filter(found -> isOfTheForm(node, found, form)).filter(found -> isInRange(node, found, form));
    }

    /**
     * A limit a serving, as a share of the batch; what is measured per something else, or in a stage, has no servings.
     */
    private Optional<Quantity> perServing(TextNode node, LimitForm form) {
        var text = node.text().strip();
        var written = Quantity.split(text.substring(0, text.length() - A_SERVING.length()));
        var number = written.flatMap(found -> Decimal.parse(found.number()));
        var symbol = written.map(Quantity.Written::symbol).orElse("");
        if (serving == null || !form.withinWhole()) {
            problems.add(
                    node.origin(),
                    "\"" + text + "\" is a limit a serving, and "
                            + (serving == null ? "none is stated for it" : "this is a ratio"),
                    "Expected a bound of the whole batch, and \"serving\": \"113 g\" in the brief.");
            return Optional.empty();
        }
        var unit = unitOfServing(symbol, serving.base());
        if (number.isEmpty() || unit.isEmpty()) {
            problems.addSpelt(
                    node.origin(),
                    "\"" + text + "\" is not a limit a serving",
                    "Expected such as \"350 mg/serving\".",
                    text);
            return Optional.empty();
        }
        return number.flatMap(found -> unit.map(known -> Quantity.of(found, known, text)));
    }

    private static Optional<Unit> unitOfServing(String symbol, BigFraction kilograms) {
        if (symbol.equals("kcal")) {
            return Optional.of(new Unit(symbol + A_SERVING, Dimension.ENERGY, kilograms.reciprocal()));
        }
        return Unit.find(symbol)
                .filter(unit -> unit.dimension() == Dimension.MASS)
                .map(unit -> new Unit(
                        unit.symbol() + A_SERVING,
                        Dimension.SHARE,
                        unit.factor().divide(kilograms)));
    }

    // A bare number in quotes is taken for what it is, so that the message can speak of its unit.
    private static Optional<Quantity> quantity(Node node, LimitForm form) {
        if (node instanceof NumberNode number) {
            return Optional.of(new Quantity(number.value(), Unit.NUMBER, number.spelling()));
        }
        return node instanceof TextNode text
                ? Quantity.split(text.text()).flatMap(written -> named(written, form, text.text()))
                : Optional.empty();
    }

    private static Optional<Quantity> named(Quantity.Written written, LimitForm form, String text) {
        var declared = form.unit()
                .filter(unit -> unit.dimension() == Dimension.DECLARED)
                .filter(unit -> unit.symbol().equals(written.symbol()));
        var unit = declared.or(
                        () -> written.symbol().isEmpty() ? Optional.of(Unit.NUMBER) : Unit.find(written.symbol()))
                .or(() -> form.anything() ? Optional.of(Unit.declared(written.symbol())) : Optional.empty());
        return Decimal.parse(written.number()).flatMap(number -> unit.map(known -> Quantity.of(number, known, text)));
    }

    private void tellNoNumber(Node node, LimitForm form) {
        var written = node instanceof TextNode text ? Quantity.split(text.text()) : Optional.<Quantity.Written>empty();
        var spelt = "\"" + Expect.spelling(node) + "\"";
        var what = written.filter(found -> Decimal.parse(found.number()).isPresent())
                .map(found -> spelt + " has a unit that is not known here, \"" + found.symbol() + "\"")
                .orElse(spelt + " is not a limit");
        problems.addSpelt(node.origin(), what, expected(form), Expect.spelling(node));
    }

    private boolean isOfTheForm(Node node, Quantity found, LimitForm form) {
        boolean quoted = node instanceof TextNode && found.unit().dimension() == Dimension.NUMBER && !form.anything();
        boolean right = form.accepts(found.unit()) && !quoted;
        if (!right) {
            problems.add(node.origin(), "\"" + found.text() + "\" " + wrong(found, form, quoted), expected(form));
        }
        return right;
    }

    private static String wrong(Quantity found, LimitForm form, boolean quoted) {
        if (found.unit().dimension() == Dimension.NUMBER) {
            return quoted && form.bare() ? "is a number in quotes" : "has no unit, but \"" + form.what() + "\" has one";
        }
        return form.unit().isEmpty()
                ? "has a unit, but \"" + form.what() + "\" has none"
                : "is " + found.unit().dimension().words() + ", which \"" + form.what() + "\" is not measured as";
    }

    private boolean isInRange(Node node, Quantity found, LimitForm form) {
        boolean share = found.unit().dimension() == Dimension.SHARE && form.withinWhole();
        boolean right = share
                ? Amounts.isWithinTheWhole(found)
                : !Bound.isAmount(found) || found.base().signum() >= 0;
        if (!right) {
            var what = share ? "is outside 0 % to 100 %" : "is a weight below zero";
            problems.add(node.origin(), "\"" + found.text() + "\" " + what, expected(form));
        }
        return right;
    }

    // The fractions' own compareTo looks at sizes only when both are negative.
    private boolean isAbove(Quantity min, Quantity max) {
        var low = comparable(min, max);
        var high = comparable(max, min);
        return low.isPresent() && high.isPresent() && low.get().compareTo(high.get()) > 0;
    }

    // A weight and a share compare by the batch; a bare ratio is a share already.
    private Optional<BigFraction> comparable(Quantity limit, Quantity other) {
        if (!Bound.isAmount(limit) || Bound.isAmount(other)) {
            return Optional.of(limit.base());
        }
        return batch == null ? Optional.empty() : Optional.of(limit.base().divide(batch.base()));
    }

    private void tellAbove(Node place, Quantity min, Quantity max) {
        problems.add(
                place.origin(),
                "The least, \"" + min.text() + "\", is above the most, \"" + max.text() + "\"",
                "Expected \"min\" at or below \"max\".");
    }

    private static String expected(LimitForm form) {
        return "Expected " + form.example() + ".";
    }
}
