/**
 * The way in for Java programs: open a brief, change it, have it solved, and read what came of it. All else in this jar
 * may change from one version to the next; these types, and the records of {@code panade.result} that they give, are
 * what others may build on.
 *
 * <pre>{@code
 * var filling = Panade.open(Path.of("constraints/dumpling-filling.json")).orElseThrow();
 * var cost = filling.withBatch("40 lb").orElseThrow().solve().fold(
 *         blend -> blend.costPerKg().toString(),
 *         none -> "no blend",
 *         undecided -> undecided.reason());
 * }</pre>
 */
@NullMarked
package panade.api;

import org.jspecify.annotations.NullMarked;
