package panade.buy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.compile.Extent;
import panade.compile.RuleCompiler;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.purchase.Offer;
import panade.model.LinearForm;
import panade.model.MixedModel;
import panade.plan.Planner;

/**
 * A product's blends without prices, for money is counted where packs are.
 *
 * @param compiled its columns are shares of the product
 * @param model the same with its rules
 * @param mosts the most share of each ingredient that any blend may have
 */
record Recipe(Product product, Brief brief, CompiledBrief compiled, MixedModel model, Map<String, BigFraction> mosts) {

    /** The recipes of each period; what can be known once is found once. */
    static List<List<Recipe>> of(Planner planner, List<Period> periods) {
        var known = new HashMap<List<?>, Map<String, BigFraction>>();
        var all = new ArrayList<List<Recipe>>();
        for (var period : periods) {
            var recipes = new ArrayList<Recipe>();
            for (int p = 0; p < period.products().size(); p++) {
                var product = period.products().get(p);
                var key = List.of(p, product.best().asked().candidates());
                recipes.add(of(planner, product, known, key));
            }
            all.add(List.copyOf(recipes));
        }
        return all;
    }

    private static Recipe of(
            Planner planner, Product product, Map<List<?>, Map<String, BigFraction>> known, List<?> key) {
        var asked = product.best().asked();
        var brief = asked.offering(free(asked));
        var compiled = BriefCompiler.compile(brief);
        var mosts = known.computeIfAbsent(key, none -> mosts(planner, brief, compiled));
        var model = RuleCompiler.compile(brief, compiled, Extent.ANY).model();
        return new Recipe(product, brief, compiled, model, mosts);
    }

    private static Map<String, BigFraction> mosts(Planner planner, Brief brief, CompiledBrief compiled) {
        var extent = planner.extent(compiled);
        var mosts = new LinkedHashMap<String, BigFraction>();
        brief.candidates().forEach(id -> mosts.put(id, extent.most(compiled.shareOf(id))));
        return mosts;
    }

    /** One offer without a price for each ingredient. */
    private static List<Offer> free(Brief brief) {
        var free = new LinkedHashMap<String, Offer>();
        for (var offer : brief.offers()) {
            free.putIfAbsent(offer.ingredient(), offer.unlisted());
        }
        return List.copyOf(free.values());
    }

    /** An ingredient's share over all stages, by column. */
    LinearForm share(String ingredient) {
        return compiled.shareOf(ingredient);
    }

    /** The most share of an ingredient that any blend may have. */
    BigFraction most(String ingredient) {
        return mosts.getOrDefault(ingredient, BigFraction.ZERO);
    }

    /** The blend at a point of a larger model in which its columns begin at an offset. */
    Blend blendAt(List<BigFraction> point, int offset) {
        return Planner.blendAt(
                brief,
                compiled,
                point.subList(offset, offset + compiled.columns().size()));
    }
}
