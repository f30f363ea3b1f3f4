package panade.export;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import panade.compile.CompiledBrief;
import panade.compile.CompiledBrief.Source;
import panade.compile.Limit;
import panade.domain.Side;
import panade.model.LinearModel;

/**
 * Names of a model's rows and columns that other solvers can read: the brief's own words, spelled with Latin letters,
 * digits, dots and low lines, no two alike.
 *
 * @param columns by column, its name in the file
 * @param rows by row, its name in the file
 * @param columnWords by column, what it is called in the documents
 * @param rowWords by row, what it is called in the documents
 */
record ModelNames(List<String> columns, List<String> rows, List<String> columnWords, List<String> rowWords) {
    /** What the objective is called. */
    static final String OBJECTIVE = "cost";

    /** Readers stop at 255; room is left for a number that tells two apart. */
    private static final int LONGEST = 200;

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern STRANGE = Pattern.compile("[^A-Za-z0-9._]+");

    /** Nothing at all, or begins like a number, or might be taken for a word of the format. */
    private static final Pattern MISTAKABLE = Pattern.compile(
            "|[0-9.].*|[eE][0-9].*|(?i)(st|free|inf|infinity|bounds?|gen|general|bin|binary|end|min|max)");

    /** Names for a model whose first rows and columns are a brief's, and whose others are its rules'. */
    static ModelNames of(CompiledBrief compiled, LinearModel model) {
        var columnWords = new ArrayList<String>();
        compiled.columns().forEach(source -> columnWords.add(words(source)));
        model.columns().stream().skip(columnWords.size()).forEach(column -> columnWords.add(column.name()));
        var rowWords = new ArrayList<String>();
        compiled.rows().forEach(limit -> rowWords.add(words(limit)));
        model.rows().stream().skip(rowWords.size()).forEach(row -> rowWords.add("rule " + row.name()));
        return new ModelNames(spelled(columnWords), spelled(rowWords), columnWords, rowWords);
    }

    private static String words(Source source) {
        return source.use().ingredient() + "." + source.use().stage() + "."
                + source.offer().supplier();
    }

    private static String words(Limit limit) {
        return limit instanceof Limit.OfBound of ? of.name() + side(of.side()) : limit.name();
    }

    private static String side(Side side) {
        return side == Side.MIN ? ".min" : side == Side.MAX ? ".max" : ".fixed";
    }

    private static List<String> spelled(List<String> words) {
        var taken = new HashSet<>(Set.of(OBJECTIVE));
        return words.stream().map(word -> free(spelled(word), taken)).toList();
    }

    /** A name in the letters that every reader takes. */
    static String spelled(String words) {
        var plain =
                MARKS.matcher(Normalizer.normalize(words, Normalizer.Form.NFD)).replaceAll("");
        var name = STRANGE.matcher(plain).replaceAll("_");
        var safe = MISTAKABLE.matcher(name).matches() ? "n_" + name : name;
        return safe.length() > LONGEST ? safe.substring(0, LONGEST) : safe;
    }

    private static String free(String name, Set<String> taken) {
        var candidate = name;
        for (int count = 2; !taken.add(candidate); count++) {
            candidate = name + "_" + count;
        }
        return candidate;
    }
}
