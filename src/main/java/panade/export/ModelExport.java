package panade.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.compile.BriefCompiler;
import panade.compile.Extent;
import panade.compile.RuleCompiler;
import panade.domain.Brief;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.MixedModel;

/**
 * A brief's model as another solver reads it, with the brief's own names; nothing is solved for it. Columns are
 * kilograms in a batch of {@value #BATCH}, not shares: GLPK 5.0's presolver takes a floor of less than a thousandth on
 * a column for none, and 0.08 % of white pepper is less.
 */
public final class ModelExport {
    /** Kilograms in the batch. */
    static final int BATCH = 1000;

    private final String title;
    private final String currency;
    private final MixedModel model;
    private final ModelNames names;
    private final List<DecimalRow> rows;

    private ModelExport(String title, String currency, MixedModel model, ModelNames names) {
        this.title = title;
        this.currency = currency.isEmpty() ? "money" : currency;
        this.model = model;
        this.names = names;
        this.rows = model.relaxed().rows().stream()
                .map(this::forTheBatch)
                .map(DecimalRow::of)
                .toList();
    }

    /** The row in kilograms; columns of whole numbers stay as they are. */
    private Row forTheBatch(Row row) {
        var form = row.form().scaledBy(column -> BigFraction.of(isWhole(column) ? BATCH : 1));
        return new Row(row.name(), form, row.sense(), row.right().multiply(BATCH));
    }

    /** The model of a brief; with rules it has columns of nought or one. */
    public static ModelExport of(Brief brief) {
        var compiled = BriefCompiler.compile(brief);
        var model = brief.practice().rules().isEmpty()
                ? new MixedModel(compiled.model(), Set.of())
                : RuleCompiler.compile(brief, compiled, Extent.ANY).model();
        return new ModelExport(brief.title(), brief.currency(), model, ModelNames.of(compiled, model.relaxed()));
    }

    /** In free MPS format. */
    public String mps() {
        return MpsText.of(this);
    }

    /** In LP format, which people can read. */
    public String lp() {
        return LpText.of(this);
    }

    /** How many columns there are. */
    public int columnCount() {
        return linear().columns().size();
    }

    /** How many rows there are, the objective not counted. */
    public int rowCount() {
        return rows.size();
    }

    /** How many columns may take whole numbers only. */
    public int wholeCount() {
        return model.whole().size();
    }

    String title() {
        return title;
    }

    ModelNames names() {
        return names;
    }

    List<DecimalRow> rows() {
        return rows;
    }

    List<BigFraction> costs() {
        return linear().columns().stream().map(Column::cost).toList();
    }

    boolean isWhole(int column) {
        return model.whole().contains(column);
    }

    private LinearModel linear() {
        return model.relaxed();
    }

    /** What a reader of the file should know, line by line. */
    List<String> remarks() {
        var lines = new ArrayList<String>();
        lines.add(title);
        lines.add("Columns are kilograms in a batch of 1000 kg; the objective is " + currency
                + " for it, to be minimised.");
        lines.add(
                "Rows are exact; each is multiplied so that its decimals end and its largest number is of common size.");
        long cut = costs().stream().filter(cost -> !DecimalRow.ends(cost)).count();
        lines.add(cut == 0 ? "Costs are exact." : cut + " costs have no last digit and are cut at 17 digits.");
        addDictionary(lines, "column", names.columns(), names.columnWords());
        addDictionary(lines, "row", names.rows(), names.rowWords());
        return lines.stream().map(ModelExport::onOneLine).toList();
    }

    /** The names that had to be spelled differently. */
    private static void addDictionary(List<String> lines, String kind, List<String> names, List<String> words) {
        for (int i = 0; i < names.size(); i++) {
            if (!names.get(i).equals(words.get(i))) {
                lines.add(kind + " " + names.get(i) + ": " + words.get(i));
            }
        }
    }

    private static String onOneLine(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ");
    }
}
