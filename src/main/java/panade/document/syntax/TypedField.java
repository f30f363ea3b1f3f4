package panade.document.syntax;

/**
 * A field of a document as somebody types it in place of what is written there, nothing of which is changed on disk.
 *
 * @param file the document, as origins name it
 * @param pointer the object that holds the field (RFC 6901)
 * @param field its name
 * @param text what is typed; blank to leave the field out
 */
public record TypedField(String file, String pointer, String field, String text) {}
