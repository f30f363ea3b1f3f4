package panade.result.open;

/**
 * Where the page to work on is served.
 *
 * @param address with the key; whoever has it may read the documents and try changes until the program ends
 */
public record OpenResult(String address) {}
