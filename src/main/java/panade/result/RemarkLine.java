package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;

/**
 * Something in a document that is no fault, and that may still not be what its cook meant.
 *
 * @param path JSON Pointer into the document
 * @param file the document
 * @param line counted from 1
 * @param text what it is and what to write instead
 * @param place where it is, as messages tell it
 */
public record RemarkLine(
        String path,
        String file,
        int line,
        String text,
        @JsonIgnore String place) {}
