package panade.assemble;

import panade.label.LabelChange;
import panade.result.LabelChangeResult;
import panade.result.LabelChangeResult.Allergens;
import panade.result.LabelChangeResult.Figure;
import panade.result.LabelChangeResult.Names;

/** Makes what a change does to a label a part of a result. */
final class LabelChanges {
    private LabelChanges() {}

    static LabelChangeResult of(LabelChange change) {
        return new LabelChangeResult(
                new Names(change.added(), change.gone(), change.reordered()),
                new Allergens(change.allergensAdded(), change.allergensGone(), change.allergensNotKnown()),
                change.figures().stream()
                        .map(figure -> new Figure(figure.id(), figure.name(), figure.before(), figure.after()))
                        .toList());
    }
}
