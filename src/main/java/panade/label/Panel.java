package panade.label;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.label.nutrition.Format;
import panade.label.nutrition.ProteinQuality;
import panade.label.nutrition.UsRounding;
import panade.quantity.Quantity;

/**
 * The draft of a label: what a panel, an ingredient statement and an allergen line would say of a blend as it is
 * weighed in, before cooking.
 *
 * @param title the product's name
 * @param request what was asked for
 * @param serving the weight of a serving; null when nobody states one
 * @param servings how many are in a package, as printed; empty when not told
 * @param rows the panel, in the order of the law
 * @param statement the ingredient statement
 * @param allergens and where each comes from
 * @param protein how good the protein is
 * @param compliance how far declared figures are from what the law tolerates; empty when no ingredient states a spread
 * @param notes how the figures were worked out
 * @param stillNeeded what a finished label says beyond this
 * @param cautions what to mind
 */
public record Panel(
        String title,
        PanelRequest request,
        @Nullable Quantity serving,
        String servings,
        List<Row> rows,
        Statement statement,
        Allergens allergens,
        ProteinQuality protein,
        List<Compliance> compliance,
        List<String> notes,
        List<Caution> stillNeeded,
        List<Caution> cautions) {
    /** What is printed in place of a figure that cannot be worked out. */
    public static final String NOT_KNOWN = "not known";

    public Panel {
        rows = List.copyOf(rows);
        compliance = List.copyOf(compliance);
        notes = List.copyOf(notes);
        stillNeeded = List.copyOf(stillNeeded);
        cautions = List.copyOf(cautions);
    }

    /**
     * A line of the panel.
     *
     * @param id a tagname; kilojoules are {@code ENERC kJ}
     * @param name as printed
     * @param level how far it is set in under what it is a part of: 0, 1 or 2
     * @param unit of the figures; empty for calories
     * @param per100g exact; null when it is not known
     * @param per100gText rounded by the law, with its unit
     * @param perServing exact; null when it is not known or there is no serving
     * @param perServingText rounded by the law, with its unit; empty when there is no serving
     * @param percent of a day's worth that a serving holds, or 100 g when there is none; empty when none is printed
     * @param unknownFor names of the ingredients whose value is missing
     */
    public record Row(
            String id,
            String name,
            int level,
            String unit,
            @Nullable BigFraction per100g,
            String per100gText,
            @Nullable BigFraction perServing,
            String perServingText,
            String percent,
            List<String> unknownFor) {
        public Row {
            unknownFor = List.copyOf(unknownFor);
        }

        /** Whether the figure could be worked out. */
        public boolean isKnown() {
            return per100g != null;
        }
    }

    /** The label of a blend with everything as usual. */
    public static Panel of(Brief brief, Blend blend, Format format) {
        return of(brief, blend, PanelRequest.of(format));
    }

    /** The label of a blend: a certified one, or one as weighed. */
    public static Panel of(Brief brief, Blend blend, PanelRequest request) {
        var serving = request.serving() == null ? brief.practice().serving() : request.serving();
        var allergens = Allergens.of(brief, blend, request.format());
        var protein = ProteinQuality.of(brief, blend);
        var rows = new PanelRows(brief, blend, request, serving, protein).rows();
        var statement = Statement.of(brief, blend, request.format(), request.tail());
        return new Panel(
                brief.title(),
                request,
                serving,
                servings(serving, request.pack()),
                rows,
                statement,
                allergens,
                protein,
                new ComplianceRows(brief, blend, serving).of(request),
                PanelNotes.of(brief, blend, request),
                new StillNeeded(brief, blend, request, statement, rows).list(),
                Cautions.of(brief, blend, allergens));
    }

    private static String servings(@Nullable Quantity serving, @Nullable Quantity pack) {
        return serving == null || pack == null
                ? ""
                : UsRounding.servings(pack.base().divide(serving.base()));
    }

    /** The weight of a serving in grams, as printed; empty when there is none. */
    public String servingGrams() {
        return serving == null ? "" : UsRounding.servingGrams(serving.base());
    }

    /** How many ingredients the blend has. */
    public int ingredients() {
        return statement.names().stream()
                .mapToInt(name -> name.ingredients().size())
                .sum();
    }

    /** Lines that could not be worked out. */
    public List<Row> unknown() {
        var unknown = new ArrayList<>(rows);
        unknown.removeIf(Row::isKnown);
        return List.copyOf(unknown);
    }
}
