package panade.result.formula;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.result.RemarkLine;
import panade.result.StudyResult.Broken;
import panade.result.StudyResult.Cost;
import panade.result.StudyResult.Target;

/**
 * How what is made fares when prices and what its ingredients hold vary.
 *
 * @param draws how many times all prices were drawn
 * @param seed what the draws start from
 * @param cost of what is made; null where something in it is not sold
 * @param target null where no cost is hoped for, or the cost is not known
 * @param contents null where nothing that it holds states a spread, or none was drawn
 * @param brokenToday titles of bounds that it breaks at the values as stated
 * @param unsold names of what no list sells
 * @param remarks on the documents
 * @param title what the formula is called
 * @param currency empty where none is stated
 */
public record MadeStudyResult(
        long draws,
        long seed,
        @Nullable Cost cost,
        @Nullable Target target,
        @Nullable Contents contents,
        List<String> brokenToday,
        List<String> unsold,
        List<RemarkLine> remarks,
        @JsonIgnore String title,
        @JsonIgnore String currency) {
    public MadeStudyResult {
        brokenToday = List.copyOf(brokenToday);
        unsold = List.copyOf(unsold);
        remarks = List.copyOf(remarks);
    }

    /**
     * Draws of what the ingredients hold.
     *
     * @param values how many values vary
     * @param inside draws in which every bound is kept of which that is known
     * @param broken bounds that are broken in some draw, most often first
     */
    public record Contents(int draws, int values, int inside, List<Broken> broken) {
        public Contents {
            broken = List.copyOf(broken);
        }
    }
}
