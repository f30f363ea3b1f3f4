/**
 * Attacks: documents, machines and models that would bring the program down if it let them. Each class says how many of
 * them it tries in the default run; {@code mvn -P harden test} tries many more.
 */
@NullMarked
package panade.harden;

import org.jspecify.annotations.NullMarked;
