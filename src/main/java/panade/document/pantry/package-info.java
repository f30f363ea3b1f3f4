/** Reads an ingredient set: ingredients, properties, label marks, stages and cooking. */
@NullMarked
package panade.document.pantry;

import org.jspecify.annotations.NullMarked;
