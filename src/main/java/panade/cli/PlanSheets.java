package panade.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import panade.buy.Campaign;
import panade.buy.PlannedBlend;
import panade.buy.PurchaseAnswers;
import panade.document.Documents;
import panade.document.Overrides;
import panade.document.Reading;
import panade.domain.Brief;
import panade.plan.Planner;
import panade.quantity.Quantity;
import panade.study.PlannedSheet;
import panade.study.Scales;
import panade.study.Weighing;

/**
 * Bench sheets for the blends of a purchase plan, each at the batch that its brief states.
 *
 * @param briefs the product's documents, in the order of the products
 */
record PlanSheets(Planner planner, List<Path> briefs) {
    /** The sheets of the plan whose blends adapt; none where there is no such plan. */
    List<PlannedSheet> of(PurchaseAnswers answers) {
        var sheets = new ArrayList<PlannedSheet>();
        var plans = answers.adapted().map(Campaign::periods).orElse(List.of());
        for (int t = 0; t < plans.size(); t++) {
            var plan = plans.get(t);
            var products = answers.periods().get(t).products();
            for (int p = 0; p < products.size(); p++) {
                var asked = products.get(p).best().asked();
                var batch = smaller(batch(briefs.get(p), asked), asked.batch());
                var brief = asked.making(batch);
                var blend = PlannedBlend.of(plan, brief, p);
                var sheet = Weighing.of(planner, brief, blend, Scales.stated(brief));
                sheets.add(new PlannedSheet(
                        plan.period(),
                        asked.batch().text(),
                        asked.batch().base().divide(batch.base()),
                        sheet));
            }
        }
        return sheets;
    }

    /** The batch that the document states, which the amount to be made stands in for elsewhere. */
    private static Quantity batch(Path file, Brief asked) {
        return Documents.readBrief(file, new Overrides(List.of(), null, List.of(), null))
                        instanceof Reading.Accepted<Brief> accepted
                ? accepted.value().batch()
                : asked.batch();
    }

    private static Quantity smaller(Quantity a, Quantity b) {
        return a.base().subtract(b.base()).signum() <= 0 ? a : b;
    }
}
