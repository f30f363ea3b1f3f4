package panade.document.setting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.document.setting.Tried.Change;
import panade.document.syntax.Amounts;
import panade.document.syntax.Node;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Overriding;
import panade.document.syntax.Problems;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.NamedBounds;
import panade.domain.Side;
import panade.domain.origin.Origin;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;
import panade.quantity.Decimal;
import panade.quantity.Dimension;
import panade.quantity.Quantity;

/** Finds what settings set in a brief as it is written, and what is to be read there instead. */
public final class SettingReader {
    private static final Set<LimitKind> WRITTEN = Set.of(LimitKind.BRIEF, LimitKind.STAGE, LimitKind.CEILING);
    private static final int FEWEST_LETTERS = 3;
    private static final int MOST_NAMES = 8;
    private static final Quantity NOTHING = Quantity.parse("0 kg").orElseThrow();

    private final Brief brief;
    private final Problems problems;
    private final NamedBounds bounds;
    private final Map<Origin, Map<String, Node>> fields = new LinkedHashMap<>();
    private final Map<OfferId, BigFraction> prices = new LinkedHashMap<>();
    private final Map<OfferId, Quantity> available = new LinkedHashMap<>();
    private final List<Change> changes = new ArrayList<>();

    /** A reader of settings of a brief, which is read as it is written. */
    public SettingReader(Brief written, Problems problems) {
        this.brief = written;
        this.problems = problems;
        this.bounds = new NamedBounds(written);
    }

    /** Takes settings, or tells what is wrong with them. */
    public void read(List<Setting> settings) {
        for (var setting : settings) {
            if (setting instanceof Setting.OfBound bound) {
                read(bound);
            } else if (setting instanceof Setting.OfPrice price) {
                read(price);
            } else if (setting instanceof Setting.OfAvailable amount) {
                read(amount);
            } else if (setting instanceof Setting.Out out) {
                read(out);
            }
        }
    }

    /** What is to be read instead of what is written. */
    public Edits edits() {
        return new Edits(fields, prices, available);
    }

    /** What each setting changes. */
    public List<Change> changes() {
        return List.copyOf(changes);
    }

    /** Whether there is anything in the brief that a setting names. */
    public boolean finds(Setting setting) {
        if (setting instanceof Setting.OfBound bound) {
            return !meant(bound.name()).isEmpty();
        }
        if (setting instanceof Setting.OfPrice price) {
            return sells(price.ingredient(), price.supplier());
        }
        return setting instanceof Setting.OfAvailable amount
                ? sells(amount.ingredient(), amount.supplier())
                : sells(((Setting.Out) setting).ingredient(), null);
    }

    private boolean sells(String ingredient, @Nullable String supplier) {
        return brief.set().idOf(ingredient).stream()
                .flatMap(id -> brief.everyOfferFor(id).stream())
                .anyMatch(offer -> supplier == null || offer.supplier().equals(supplier));
    }

    private static Origin place(Setting setting) {
        return Overriding.optionOrigin("--set \"" + setting.text() + "\"");
    }

    private List<Bound> meant(String name) {
        var named = bounds.named(name);
        return (named.isEmpty() ? bounds.measuring(name) : named)
                .stream().filter(bound -> WRITTEN.contains(bound.kind())).toList();
    }

    private void read(Setting.OfBound setting) {
        var found = meant(setting.name());
        if (found.isEmpty()) {
            tellNoBound(setting);
        } else if (found.size() > 1) {
            problems.add(
                    place(setting),
                    found.size() + " bounds can be meant by \"" + setting.name() + "\"",
                    "Expected one by its name or its path: "
                            + found.stream()
                                    .map(bound -> "\"" + bound.name() + "\" (" + bound.path() + ")")
                                    .collect(Collectors.joining(", "))
                            + ".");
        } else {
            set(setting, found.get(0));
        }
    }

    private void set(Setting.OfBound setting, Bound bound) {
        boolean ceiling = bound.kind() == LimitKind.CEILING;
        if (ceiling && setting.side() != Side.MAX) {
            problems.add(
                    place(setting),
                    "\"" + bound.name() + "\" is the most that may be used, and has no least",
                    "Expected such as \"" + bound.name() + " max 5 %\".");
            return;
        }
        var node = number(setting);
        var edits = fields.computeIfAbsent(bound.origin(), origin -> new LinkedHashMap<>());
        var set = ceiling ? List.of("maxUse") : sides(setting.side());
        set.forEach(name -> put(edits, name, node, setting, bound.name()));
        changes.add(new Change.OfBound(setting.text(), bound, setting.side(), setting.number()));
    }

    /** Puts a number into its place, where no other may be. */
    private <K, V> void put(Map<K, V> places, K place, V number, Setting setting, String what) {
        if (places.put(place, number) != null) {
            problems.add(place(setting), "\"" + what + "\" is set twice", "Expected one number for it.");
        }
    }

    private static List<String> sides(Side side) {
        return side == Side.FIXED ? List.of("min", "max") : List.of(side == Side.MIN ? "min" : "max");
    }

    private static Node number(Setting.OfBound setting) {
        var typed = setting.number();
        return Decimal.parse(typed)
                .<Node>map(value -> new NumberNode(place(setting), value, typed))
                .orElseGet(() -> new TextNode(place(setting), typed));
    }

    private void tellNoBound(Setting.OfBound setting) {
        var names = brief.bounds().stream()
                .filter(bound -> WRITTEN.contains(bound.kind()))
                .map(Bound::name)
                .distinct()
                .toList();
        problems.unknown(
                place(setting),
                "No bound is called \"" + setting.name() + "\"",
                setting.name(),
                names,
                names.isEmpty()
                        ? "The brief has no bounds."
                        : "Expected the name of a bound, such as " + near(setting.name(), names) + ".");
    }

    /** Names that share a word with what was typed; else the first ones. */
    private static String near(String typed, List<String> names) {
        var near = names.stream().filter(name -> sharesWord(name, typed)).toList();
        var told = near.isEmpty() ? names : near;
        return told.stream().limit(MOST_NAMES).map(name -> "\"" + name + "\"").collect(Collectors.joining(", "));
    }

    private static boolean sharesWord(String name, String typed) {
        var lower = name.toLowerCase(Locale.ROOT);
        for (var word : typed.toLowerCase(Locale.ROOT).split("\\W+", -1)) {
            if (word.length() >= FEWEST_LETTERS && lower.contains(word)) {
                return true;
            }
        }
        return false;
    }

    private void read(Setting.OfPrice setting) {
        var offers = offers(setting, setting.ingredient(), Optional.ofNullable(setting.supplier()));
        var price = new Amounts(problems, brief.currency()).price(new TextNode(place(setting), setting.price()));
        price.filter(found -> !offers.isEmpty()).ifPresent(found -> {
            offers.forEach(offer -> put(prices, offer.id(), found.perKg(), setting, "price " + setting.ingredient()));
            changes.add(new Change.OfOffers(setting.text(), offers, setting.price(), found.perKg(), null));
        });
    }

    private void read(Setting.OfAvailable setting) {
        var offers = offers(setting, setting.ingredient(), Optional.ofNullable(setting.supplier()));
        var amount = Quantity.parse(setting.amount())
                .filter(found -> found.unit().dimension() == Dimension.MASS)
                .filter(found -> found.base().signum() >= 0);
        if (amount.isEmpty()) {
            problems.addSpelt(
                    place(setting),
                    "\"" + setting.amount() + "\" is no weight that there can be",
                    "Expected a weight from 0 up, such as \"5 lb\".",
                    setting.amount());
        } else if (offers.size() > 1) {
            problems.add(
                    place(setting),
                    "Of \"" + setting.ingredient() + "\" there are " + offers.size() + " offers, and each has its own",
                    "Expected whose, such as \"available " + setting.ingredient() + " from "
                            + offers.get(0).supplier() + " " + setting.amount() + "\"; offers: " + sellers(offers)
                            + ".");
        } else if (!offers.isEmpty()) {
            there(setting, offers, amount.get());
            changes.add(new Change.OfOffers(setting.text(), offers, null, null, setting.amount()));
        }
    }

    private void read(Setting.Out setting) {
        var all = new ArrayList<Offer>();
        if (!offers(setting, setting.ingredient(), Optional.empty()).isEmpty()) {
            brief.set()
                    .idOf(setting.ingredient())
                    .ifPresent(id -> brief.set().withVariants(id).forEach(lot -> all.addAll(brief.everyOfferFor(lot))));
            there(setting, all, NOTHING);
            changes.add(new Change.OfOffers(setting.text(), all, null, null, NOTHING.text()));
        }
    }

    private void there(Setting setting, List<Offer> offers, Quantity amount) {
        offers.forEach(offer -> put(available, offer.id(), amount, setting, "available " + offer.ingredient()));
    }

    /** The offers that are meant; none where there is none, which is told. */
    private List<Offer> offers(Setting setting, String name, Optional<String> supplier) {
        var id = brief.set().idOf(name);
        if (id.isEmpty()) {
            problems.unknown(
                    place(setting),
                    "No ingredient is called \"" + name + "\"",
                    name,
                    brief.set().ingredients().keySet(),
                    "Expected the id of one in the ingredient set, such as "
                            + near(name, List.copyOf(brief.set().ingredients().keySet())) + ".");
            return List.of();
        }
        var listed = brief.everyOfferFor(id.get());
        if (listed.isEmpty()) {
            problems.add(
                    place(setting),
                    "No price list sells \"" + id.get() + "\", so there is nothing to set",
                    "Expected what a list sells; its row must be added to a list.");
            return List.of();
        }
        var meant = listed.stream()
                .filter(offer -> supplier.isEmpty() || supplier.get().equals(offer.supplier()))
                .toList();
        if (meant.isEmpty()) {
            problems.unknown(
                    place(setting),
                    "\"" + supplier.orElse("") + "\" does not sell \"" + id.get() + "\"",
                    supplier.orElse(""),
                    listed.stream().map(Offer::supplier).toList(),
                    "Expected who does: " + sellers(listed) + ".");
        }
        return meant;
    }

    private static String sellers(List<Offer> offers) {
        return offers.stream()
                .map(Offer::supplier)
                .distinct()
                .map(name -> "\"" + name + "\"")
                .collect(Collectors.joining(", "));
    }
}
