package panade.buy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.buy.PurchaseModel.Need;
import panade.certify.Verdict.Optimum;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.compile.Extent;
import panade.compile.RuleCompiler;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Offer;
import panade.domain.StoreRoom;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.plan.Planner;
import panade.solver.MixedAnswer.Found;

/** Finds what to order for products made from one store room. */
public final class Buying {
    private final Planner planner;
    private final List<Product> products;
    private final StoreRoom room;
    private final Duration limit;
    private final List<Made> made = new ArrayList<>();
    private final List<Column> columns = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private final Set<Integer> whole = new HashSet<>();

    /** A product's part of the model: its columns begin at an offset and are shares of it. */
    private record Made(Product product, Brief brief, CompiledBrief compiled, Extent extent, int offset) {}

    private Buying(Planner planner, List<Product> products, StoreRoom room, Duration limit) {
        this.planner = planner;
        this.products = products;
        this.room = room;
        this.limit = limit;
        products.forEach(this::addMade);
    }

    /**
     * The three answers.
     *
     * @param worth what leftovers count for, as a part of their price
     * @param limit for each answer's search
     */
    public static PurchaseAnswers answers(
            Planner planner, List<Product> products, StoreRoom room, BigFraction worth, Duration limit) {
        var buying = new Buying(planner, products, room, limit);
        return new PurchaseAnswers(
                products,
                products.stream()
                        .map(product -> product.best().blend().rawCostPerKg().multiply(product.kilograms()))
                        .reduce(BigFraction.ZERO, BigFraction::add),
                buying.frozen(worth),
                buying.adapted(worth, worth),
                buying.adapted(BigFraction.ZERO, worth));
    }

    private void addMade(Product product) {
        var asked = product.best().asked();
        var brief = asked.offering(free(asked));
        var compiled = BriefCompiler.compile(brief);
        var choice = RuleCompiler.compile(brief, compiled, Extent.ANY).model();
        int offset = columns.size();
        made.add(new Made(product, brief, compiled, planner.extent(compiled), offset));
        columns.addAll(choice.relaxed().columns());
        choice.relaxed().rows().forEach(row -> rows.add(shifted(row, offset)));
        choice.whole().forEach(column -> whole.add(column + offset));
    }

    /** One offer without a price for each ingredient: money is counted where packs are. */
    private static List<Offer> free(Brief brief) {
        var free = new LinkedHashMap<String, Offer>();
        brief.offers()
                .forEach(offer -> free.putIfAbsent(
                        offer.ingredient(),
                        new Offer(offer.ingredient(), "any", BigFraction.ZERO, null, null, null, "", offer.origin())));
        return List.copyOf(free.values());
    }

    private static Row shifted(Row row, int offset) {
        var terms = new HashMap<Integer, BigFraction>();
        row.coefficients().forEach((j, value) -> terms.put(j + offset, value));
        return new Row(row.name(), terms, row.sense(), row.right());
    }

    private List<Offer> offers(String ingredient) {
        var offers = new LinkedHashSet<Offer>();
        products.forEach(product -> offers.addAll(product.best().asked().offersFor(ingredient)));
        return List.copyOf(offers);
    }

    private Set<String> ingredients() {
        var ids = new TreeSet<String>();
        products.forEach(product -> ids.addAll(product.best().asked().candidates()));
        return ids;
    }

    private static BigFraction asBought(Brief brief, String ingredient) {
        return brief.set().ingredient(ingredient).usable().reciprocal();
    }

    private Optional<PurchasePlan> frozen(BigFraction worth) {
        var model = new PurchaseModel(new LinearModel(List.of(), List.of()), Set.of(), room, worth);
        for (var id : ingredients()) {
            var needed = products.stream()
                    .map(product -> product.best()
                            .blend()
                            .shareOf(id)
                            .multiply(product.kilograms())
                            .multiply(asBought(product.best().asked(), id)))
                    .reduce(BigFraction.ZERO, BigFraction::add);
            if (needed.signum() > 0) {
                model.add(new Need(id, needed, Map.of(), needed), offers(id));
            }
        }
        var blends = products.stream().map(product -> product.best().blend()).toList();
        return plan(model, model, point -> blends);
    }

    /**
     * A plan whose blends suit the packs.
     *
     * @param counted what leftovers count for when packs are chosen
     * @param worth what they count for when the blends are, with those packs
     */
    private Optional<PurchasePlan> adapted(BigFraction counted, BigFraction worth) {
        return plan(purchase(counted), purchase(worth), this::blends);
    }

    private PurchaseModel purchase(BigFraction worth) {
        var model = new PurchaseModel(new LinearModel(columns, rows), whole, room, worth);
        for (var id : ingredients()) {
            model.add(new Need(id, BigFraction.ZERO, form(id), most(id)), offers(id));
        }
        return model;
    }

    /** Kilograms as bought by column. */
    private Map<Integer, BigFraction> form(String id) {
        var form = new HashMap<Integer, BigFraction>();
        for (var each : made) {
            for (int j = 0; j < each.compiled().columns().size(); j++) {
                if (each.compiled().columns().get(j).use().ingredient().equals(id)) {
                    form.put(j + each.offset(), each.product().kilograms().multiply(asBought(each.brief(), id)));
                }
            }
        }
        return form;
    }

    private BigFraction most(String id) {
        var most = BigFraction.ZERO;
        for (var each : made) {
            var share = new HashMap<Integer, BigFraction>();
            for (int j = 0; j < each.compiled().columns().size(); j++) {
                if (each.compiled().columns().get(j).use().ingredient().equals(id)) {
                    share.put(j, BigFraction.ONE);
                }
            }
            if (!share.isEmpty()) {
                most = most.add(each.extent()
                        .most(share)
                        .multiply(each.product().kilograms())
                        .multiply(asBought(each.brief(), id)));
            }
        }
        return most;
    }

    private List<Blend> blends(List<BigFraction> point) {
        return made.stream()
                .map(each -> Planner.blendAt(
                        each.brief(),
                        each.compiled(),
                        point.subList(
                                each.offset(),
                                each.offset() + each.compiled().columns().size())))
                .toList();
    }

    /** Reads blends off a point. */
    private interface Blends {
        List<Blend> at(List<BigFraction> point);
    }

    /** The plan that the search finds, its packs held and the rest proved; empty when it finds none. */
    private Optional<PurchasePlan> plan(PurchaseModel chosen, PurchaseModel purchase, Blends blends) {
        var model = chosen.model();
        if (!(planner.search(model, limit) instanceof Found found)
                || !(planner.verdict(purchase.model().holding(found.values())) instanceof Optimum optimum)) {
            return Optional.empty();
        }
        var point = optimum.point();
        var lines = lines(purchase, point);
        return Optional.of(new PurchasePlan(
                lines,
                purchase.ordered(point).stream()
                        .map(supplier -> new PurchasePlan.Order(room.termsOf(supplier), goods(supplier, lines)))
                        .toList(),
                ingredients().stream()
                        .filter(id -> purchase.holds(id))
                        .map(id -> stock(id, purchase, point, lines))
                        .toList(),
                blends.at(point),
                model.relaxed().costAt(point),
                found.bound(),
                found.finished()));
    }

    private static List<PurchasePlan.Line> lines(PurchaseModel purchase, List<BigFraction> point) {
        var lines = new ArrayList<PurchasePlan.Line>();
        purchase.bought(point).forEach((offer, packs) -> {
            if (packs.signum() > 0) {
                var kilograms = packs.multiply(PurchaseModel.kilograms(offer));
                lines.add(new PurchasePlan.Line(offer, packs, kilograms, kilograms.multiply(offer.pricePerKg())));
            }
        });
        return lines;
    }

    private static BigFraction goods(String supplier, List<PurchasePlan.Line> lines) {
        return lines.stream()
                .filter(line -> line.offer().supplier().equals(supplier))
                .map(PurchasePlan.Line::money)
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    private PurchasePlan.Stock stock(
            String id, PurchaseModel purchase, List<BigFraction> point, List<PurchasePlan.Line> lines) {
        var bought = BigFraction.ZERO;
        var paid = BigFraction.ZERO;
        for (var line : lines) {
            if (line.offer().ingredient().equals(id)) {
                bought = bought.add(line.kilograms());
                paid = paid.add(line.money());
            }
        }
        var left = purchase.left(id, point);
        var onHand = room.onHand(id);
        return new PurchasePlan.Stock(
                id,
                onHand,
                bought,
                onHand.add(bought).subtract(left),
                left,
                bought.signum() == 0 ? PurchaseModel.price(offers(id)) : paid.divide(bought));
    }
}
