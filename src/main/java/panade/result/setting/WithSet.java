package panade.result.setting;

import com.fasterxml.jackson.annotation.JsonUnwrapped;

/**
 * An answer with what numbers that were tried moved.
 *
 * @param answer a result
 */
public record WithSet(@JsonUnwrapped Object answer, SetResult set) {}
