package panade.solver.ortools;

import java.time.Duration;
import panade.model.MixedModel;
import panade.solver.MixedAnswer;
import panade.solver.MixedSolver;

/** The border to native code for models with whole numbers; as watchful as {@link OrToolsSolver}. */
public final class OrToolsMixedSolver implements MixedSolver {
    @Override
    public String name() {
        return "CBC";
    }

    @Override
    public MixedAnswer solve(MixedModel model, Duration limit) {
        if (model.relaxed().columns().isEmpty() || model.relaxed().rows().isEmpty()) {
            return new MixedAnswer.Undecided("the model has no rows or no columns");
        }
        var scaled = RowScaling.scaled(model.relaxed());
        var objection = Vetting.objection(scaled);
        if (objection.isPresent()) {
            return new MixedAnswer.Undecided(objection.get());
        }
        var fault = NativeLibraries.fault();
        return fault.isPresent()
                ? new MixedAnswer.Undecided(fault.get())
                : Cbc.solve(new MixedModel(scaled, model.whole()), limit);
    }
}
