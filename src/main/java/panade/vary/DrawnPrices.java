package panade.vary;

import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;
import panade.plan.Outcome.Blended;
import panade.scenario.PriceDraws;
import panade.scenario.ScenarioModel;

/**
 * A brief whose prices are drawn.
 *
 * @param compiled the brief at today's prices
 * @param offers whose prices are drawn, in the order of the columns
 * @param ingredients in the order of the columns
 * @param model the same for many draws
 */
record DrawnPrices(CompiledBrief compiled, List<Offer> offers, List<String> ingredients, ScenarioModel model) {
    /** The prices of a blend's brief, each off by its spread at most; none for what is left out. */
    static DrawnPrices of(Blended today, Map<OfferId, BigFraction> spreads, long seed) {
        var compiled = BriefCompiler.compile(today.brief());
        var offers = compiled.columns().stream()
                .map(CompiledBrief.Source::offer)
                .distinct()
                .toList();
        var ingredients = compiled.columns().stream()
                .map(source -> source.use().ingredient())
                .distinct()
                .toList();
        var draws = new PriceDraws(
                seed,
                offers.stream()
                        .map(offer -> spreads.getOrDefault(offer.id(), BigFraction.ZERO))
                        .toList());
        var model = new ScenarioModel(
                compiled.model(),
                today.proof().basis(),
                compiled.columns().stream()
                        .map(source -> offers.indexOf(source.offer()))
                        .toList(),
                compiled.columns().stream()
                        .map(source -> ingredients.indexOf(source.use().ingredient()))
                        .toList(),
                draws);
        return new DrawnPrices(compiled, offers, ingredients, model);
    }
}
