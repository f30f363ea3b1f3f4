package panade.published;

import java.math.BigDecimal;
import tools.jackson.databind.JsonNode;

/** What a source says of one bound at its optimum, in the source's units. */
record PublishedBound(Optimum optimum, JsonNode figures) {

    String name() {
        return figures.get("name").asString();
    }

    JsonNode printed() {
        return optimum.run().bound("name", name());
    }

    /** The published limit for one of the document's own units of the bound. */
    BigDecimal limitPerUnit() {
        return figures.get("limitTimes").decimalValue();
    }

    /** Change of the least cost per kg for one of the bound's own units more. */
    BigDecimal rateRaised() {
        return rate("right");
    }

    /** Change of the least cost per kg for one of the bound's own units less: a step to the left. */
    BigDecimal rateLowered() {
        return rate("left").negate();
    }

    private BigDecimal rate(String side) {
        BigDecimal published = figures.get(side).decimalValue();
        return Figures.divide(published.multiply(limitPerUnit()), optimum.ratesPerCostPerKg());
    }

    @Override
    public String toString() {
        return name() + ", " + optimum;
    }
}
