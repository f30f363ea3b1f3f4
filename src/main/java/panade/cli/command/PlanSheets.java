package panade.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.bench.PlannedBench;
import panade.bench.PlannedBench.Shortage;
import panade.bench.PlannedSheet;
import panade.bench.Scales;
import panade.bench.Weighing;
import panade.buy.MultiPeriodPlan;
import panade.buy.PlannedBlend;
import panade.buy.PurchaseAnswers;
import panade.buy.PurchasePlan.Stock;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.plan.Planner;
import panade.quantity.Quantity;

/**
 * Bench sheets for the blends of a purchase plan, each at the batch that its brief states.
 *
 * @param briefs the product's documents, in the order of the products
 */
public record PlanSheets(Planner planner, List<Path> briefs) {
    /** The sheets of the plan whose blends adapt; none where there is no such plan. */
    PlannedBench of(PurchaseAnswers answers) {
        var sheets = new ArrayList<PlannedSheet>();
        var shortages = new ArrayList<Shortage>();
        var plans = answers.adapted().map(MultiPeriodPlan::periods).orElse(List.of());
        for (int t = 0; t < plans.size(); t++) {
            var plan = plans.get(t);
            var products = answers.periods().get(t).products();
            int from = sheets.size();
            for (int p = 0; p < products.size(); p++) {
                var asked = products.get(p).best().asked();
                var batch = smaller(batch(briefs.get(p), asked), asked.batch());
                var brief = asked.withBatch(batch);
                var blend = PlannedBlend.of(plan, brief, p);
                var sheet = Weighing.of(planner, brief, blend, Scales.stated(brief));
                sheets.add(new PlannedSheet(
                        plan.period(),
                        asked.batch().text(),
                        asked.batch().base().divide(batch.base()),
                        sheet));
            }
            plan.store()
                    .forEach(stock -> shortage(stock, plan.period(), sheets.subList(from, sheets.size()))
                            .ifPresent(shortages::add));
        }
        return new PlannedBench(sheets, shortages);
    }

    /** Of how much of an ingredient more is weighed out in all batches than is there. */
    private static Optional<Shortage> shortage(Stock stock, String period, List<PlannedSheet> sheets) {
        var set = sheets.get(0).sheet().brief().set();
        var weighed = sheets.stream()
                .flatMap(planned -> planned.sheet().lines().stream()
                        .filter(line -> line.use().ingredient().equals(stock.ingredient()))
                        .map(line -> line.weight().multiply(planned.batches())))
                .reduce(BigFraction.ZERO, BigFraction::add);
        var ingredient = set.ingredient(stock.ingredient());
        var there = stock.before().add(stock.bought()).subtract(stock.wasted());
        var missing = weighed.divide(ingredient.usable()).subtract(there);
        return missing.signum() > 0
                ? Optional.of(new Shortage(period, stock.ingredient(), ingredient.name(), missing))
                : Optional.empty();
    }

    /** The batch that the document states, which the amount to be made stands in for elsewhere. */
    private static Quantity batch(Path file, Brief asked) {
        return Documents.readBrief(file, new Overrides(List.of(), null, List.of(), null))
                        instanceof Reading.Accepted<Brief> accepted
                ? accepted.value().batch()
                : asked.batch();
    }

    private static Quantity smaller(Quantity a, Quantity b) {
        return a.base().compareTo(b.base()) <= 0 ? a : b;
    }
}
