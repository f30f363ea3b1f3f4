package panade.bench;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The bench sheet of a product in a purchase plan.
 *
 * @param period when it is made; empty when there is only one
 * @param amount of the product that the plan makes, as it was asked for
 * @param batches of the sheet that this takes
 */
public record PlannedSheet(String period, String amount, BigFraction batches, BatchSheet sheet) {}
