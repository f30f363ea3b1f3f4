package panade.intake.table;

/**
 * What a column is taken for because of what its head says.
 *
 * @param sheet the sheet's name; empty where a file has only one table
 * @param heading as it stands in the table
 * @param name one of our columns, or a property with its unit in brackets
 * @param per of a price: the weight it is for, {@link #PACK} for what is sold at once, or empty
 * @param currency of a price: its code, or empty
 */
public record Guess(String sheet, String heading, String name, String per, String currency) {
    /** Stands for the weight of a row's pack. */
    public static final String PACK = "pack";

    /** What the column is, in words. */
    public String words() {
        var weight = per.equals(PACK) ? " of a pack" : per.isEmpty() ? "" : " per " + per;
        return name + weight + (currency.isEmpty() ? "" : " in " + currency);
    }
}
