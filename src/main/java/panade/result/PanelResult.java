package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * The draft of a label.
 *
 * @param draft always true: what a finished label needs beyond it is in {@code stillNeeded}
 * @param format whose law it follows
 * @param serving its weight as printed; null when nobody states one
 * @param servings how many are in a package, as printed; null when not known
 * @param rows the panel, in the order of the law
 * @param proteinQuality the scores of the protein
 * @param compliance empty when no ingredient states a spread
 * @param notes how the figures were worked out
 * @param remarks on the brief that the blend was made from
 * @param title the product's
 * @param law where the format stands
 * @param percentHeading what per cent of a day's worth are called
 * @param subject which blend it is of, in a sentence
 * @param servingGrams exact; null when nobody states a serving
 */
public record PanelResult(
        boolean draft,
        Format format,
        @Nullable String serving,
        @Nullable String servings,
        List<Row> rows,
        Statement statement,
        Allergens allergens,
        List<Score> proteinQuality,
        List<Compliance> compliance,
        List<String> notes,
        List<Sourced> stillNeeded,
        List<Sourced> cautions,
        List<RemarkLine> remarks,
        @JsonIgnore String title,
        @JsonIgnore String law,
        @JsonIgnore String percentHeading,
        @JsonIgnore String subject,
        @JsonIgnore @Nullable BigFraction servingGrams) {
    /** What is printed in place of a figure that cannot be worked out. */
    public static final String NOT_KNOWN = "not known";

    public PanelResult {
        rows = List.copyOf(rows);
        proteinQuality = List.copyOf(proteinQuality);
        compliance = List.copyOf(compliance);
        notes = List.copyOf(notes);
        stillNeeded = List.copyOf(stillNeeded);
        cautions = List.copyOf(cautions);
        remarks = List.copyOf(remarks);
    }

    /** Whose law a label follows. */
    public enum Format {
        US,
        EU
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
     * @param percent of a day's worth that a serving holds, or 100 g when there is none; null when none is printed
     * @param unknownFor names of the ingredients whose value is missing
     * @param unknownForAll whether those are all ingredients of the blend
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
            @Nullable String percent,
            List<String> unknownFor,
            @JsonIgnore boolean unknownForAll) {
        public Row {
            unknownFor = List.copyOf(unknownFor);
        }
    }

    /**
     * The ingredient statement.
     *
     * @param text as it would be printed
     * @param names by weight as added, heaviest first
     */
    public record Statement(String text, List<Name> names) {
        public Statement {
            names = List.copyOf(names);
        }
    }

    /**
     * A name on the label.
     *
     * @param share of the batch
     * @param ingredients ids of what goes under that name
     * @param printed the name with what stands in brackets behind it, and with its allergens as the law wants them
     */
    public record Name(
            String label,
            BigFraction share,
            List<String> ingredients,
            @JsonIgnore String printed) {
        public Name {
            ingredients = List.copyOf(ingredients);
        }
    }

    /**
     * Allergens in the blend.
     *
     * @param contains the line beside the statement; empty where the law wants none
     * @param named those that the law asks to be named
     * @param others those that are stated and that this law does not list
     * @param unknownFor names of ingredients for which nothing is stated
     * @param unclear words that no label can be made of
     * @param sentence what is known, for whoever drafts the label
     */
    public record Allergens(
            String contains,
            List<Carried> named,
            List<Carried> others,
            List<String> unknownFor,
            List<Unclear> unclear,
            @JsonIgnore String sentence) {
        public Allergens {
            named = List.copyOf(named);
            others = List.copyOf(others);
            unknownFor = List.copyOf(unknownFor);
            unclear = List.copyOf(unclear);
        }
    }

    /**
     * An allergen.
     *
     * @param name as the law calls it
     * @param from names of the ingredients that carry it
     */
    public record Carried(String name, List<String> from) {
        public Carried {
            from = List.copyOf(from);
        }
    }

    /**
     * A word for an allergen that no law's list knows, or that leaves open what the law asks for.
     *
     * @param ingredient its id
     * @param place where it stands
     * @param what what is wrong, without a full stop
     * @param advice what to write instead
     */
    public record Unclear(
            String ingredient,
            String word,
            @JsonIgnore String place,
            @JsonIgnore String what,
            @JsonIgnore String advice) {}

    /**
     * A score of the protein's quality.
     *
     * @param score with anything over 1 cut off; null when it is not known
     * @param uncut before that; null when it is not known
     * @param limiting the amino acid that there is least of, compared with the pattern; null when not known
     * @param atLeast the score if what is not known were none; null when not even that can be told
     * @param missing what would have to be known
     * @param pattern where the amino acids that it is compared with are published
     * @param patternFor whose need they are
     */
    public record Score(
            String name,
            @Nullable BigFraction score,
            @Nullable BigFraction uncut,
            @Nullable String limiting,
            @Nullable BigFraction atLeast,
            List<Missing> missing,
            String pattern,
            @JsonIgnore String patternFor) {
        public Score {
            missing = List.copyOf(missing);
        }
    }

    /** An ingredient, by its name, that brings protein and lacks values. */
    public record Missing(String ingredient, List<String> values) {
        public Missing {
            values = List.copyOf(values);
        }
    }

    /**
     * How far a declared figure is from what a laboratory may find before the law minds, in the line's unit.
     *
     * @param declared as printed: per serving in the United States, per 100 g in the Union
     * @param low what must be found at least; null when nothing is too little
     * @param high what may be found at most; null when nothing is too much
     * @param expected what the blend holds
     * @param spread standard deviation of that; null when an ingredient states none
     * @param room standard deviations to the nearer limit, below zero beyond it; null when not known or without a
     *     spread
     * @param unknownFor names of the ingredients that state no spread
     * @param source of the tolerance
     * @param outside whether what is expected is beyond a limit
     */
    public record Compliance(
            String id,
            String name,
            String declared,
            @Nullable BigFraction low,
            @Nullable BigFraction high,
            BigFraction expected,
            @Nullable BigDecimal spread,
            @Nullable BigDecimal room,
            List<String> unknownFor,
            String source,
            @JsonIgnore boolean outside) {
        public Compliance {
            unknownFor = List.copyOf(unknownFor);
        }
    }

    /** A sentence, and who says so. */
    public record Sourced(String text, String source) {}
}
