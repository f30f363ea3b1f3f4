package panade.page.open;

import java.util.ArrayList;
import java.util.List;
import panade.document.syntax.Problem;

/**
 * What is wrong with what was typed, or with the documents.
 *
 * @param ofFields each beside a field of the page
 * @param others all else, with the places where it stands
 */
public record FaultsView(List<OfField> ofFields, List<String> others) {
    public FaultsView {
        ofFields = List.copyOf(ofFields);
        others = List.copyOf(others);
    }

    /** A fault in a field. */
    public record OfField(String field, String words) {}

    /** Faults of documents, before there is a page. */
    public static FaultsView of(List<Problem> problems) {
        return new FaultsView(List.of(), problems.stream().map(Problem::text).toList());
    }

    /** Faults of what was typed; those of no field are told with their places. */
    static FaultsView of(List<Problem> problems, Controls controls) {
        var ofFields = new ArrayList<OfField>();
        var others = new ArrayList<String>();
        for (var problem : problems) {
            controls.fieldOf(problem)
                    .ifPresentOrElse(
                            field -> ofFields.add(new OfField(field, words(problem))),
                            () -> others.add(problem.text()));
        }
        return new FaultsView(ofFields, others);
    }

    private static String words(Problem problem) {
        return problem.what() + ". " + String.join(" ", problem.advice());
    }
}
