package panade.report.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.result.formula.CompareResult;
import panade.result.formula.CompareResult.Asked;
import panade.result.formula.CompareResult.BoundRow;
import panade.result.formula.CompareResult.Item;
import panade.result.formula.CompareResult.Kind;
import panade.result.formula.CompareResult.Label;
import panade.result.formula.MadeResult.Cost;

/** Words formulas and the cheapest blends of briefs side by side. */
public final class CompareReport {
    /** Bounds that are kept by all and asked otherwise of some: so many are shown. */
    private static final int ROWS = 12;

    private static final int DIGITS = 4;
    private static final String NOTHING = "-";
    private static final String UNKNOWN = "not known";

    private final CompareResult result;

    private CompareReport(CompareResult result) {
        this.result = result;
    }

    /** The report. */
    public static ReportDocument of(CompareResult result) {
        return new CompareReport(result).document();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Points(result.items().stream().map(CompareReport::named).toList()));
        addCosts(blocks);
        addBounds(blocks);
        addWeights(blocks);
        addHoldings(blocks);
        addLabels(blocks);
        return Remarks.on(new ReportDocument("Side by side", blocks), result.remarks());
    }

    private static String named(Item item) {
        var what = (item.kind() == Kind.FORMULA ? "formula " : "cheapest blend of ") + item.file();
        var told = item.title().equals(item.file()) ? what : item.title() + " (" + what + ")";
        return item.name() + ": " + told + (item.without() == null ? "" : ": none, since " + item.without());
    }

    private List<Column> columns(String... before) {
        return Stream.concat(
                        Stream.of(before).map(heading -> new Column(heading, false)),
                        result.items().stream().map(item -> new Column(item.name(), true)))
                .toList();
    }

    private List<String> row(String before, Function<Item, String> cell) {
        return Stream.concat(Stream.of(before), result.items().stream().map(cell))
                .toList();
    }

    private void addCosts(List<Block> blocks) {
        blocks.add(new Heading("What they cost, ingredients only"));
        var money = money();
        var rows = new ArrayList<List<String>>();
        if (money.isEmpty()) {
            rows.add(row("money", item -> cost(item, Cost::currency, currency -> currency)));
        }
        rows.add(row("a pound", item -> cost(item, Cost::perLb, Figures::money)));
        rows.add(row("a pound, against A", CompareReport::change));
        rows.add(row("a kilogram", item -> cost(item, Cost::perKg, Figures::money)));
        rows.add(row(
                result.batch(),
                item -> item.measured() == null ? NOTHING : told(item.sameBatchCost(), Figures::cash, UNKNOWN)));
        blocks.add(new Table(columns(money.orElse("Cost") + " for"), rows));
        result.items()
                .forEach(item -> addIf(
                        blocks,
                        item.name() + " holds what nobody sells: ",
                        item.measured() == null ? List.of() : item.measured().unsold()));
    }

    /** The currency, where it is the same for all. */
    private Optional<String> money() {
        var all = result.items().stream()
                .filter(item -> item.measured() != null)
                .map(item -> cost(item, Cost::currency, currency -> currency))
                .distinct()
                .toList();
        return all.size() == 1 && !all.get(0).equals(UNKNOWN) ? Optional.of(all.get(0)) : Optional.empty();
    }

    private static <T> String cost(Item item, Function<Cost, @Nullable T> of, Function<T, String> words) {
        var measured = item.measured();
        return measured == null ? NOTHING : told(of.apply(measured.cost()), words, UNKNOWN);
    }

    private static String change(Item item) {
        var change = item.changePerKg();
        return item.measured() == null
                ? NOTHING
                : told(change, each -> (each.signum() > 0 ? "+" : "") + Figures.money(Figures.perPound(each)), UNKNOWN);
    }

    private static <T> String told(@Nullable T value, Function<T, String> words, String otherwise) {
        return value == null ? otherwise : words.apply(value);
    }

    private static void addIf(List<Block> blocks, String before, List<String> names) {
        if (!names.isEmpty()) {
            blocks.add(new Paragraph(before + String.join(", ", names) + "."));
        }
    }

    private void addBounds(List<Block> blocks) {
        blocks.add(new Heading("What they break"));
        var points = new ArrayList<String>();
        result.items().stream().filter(item -> item.measured() != null).forEach(item -> {
            points.add(item.name() + " " + kept(item));
            item.rulesBroken().forEach(rule -> points.add(item.name() + " " + rule + "."));
        });
        blocks.add(new Points(points));
        var all = result.bounds();
        var shown = Stream.concat(
                        all.stream().filter(CompareReport::isBroken),
                        all.stream().filter(row -> !isBroken(row)).limit(ROWS))
                .toList();
        if (!shown.isEmpty()) {
            blocks.add(new Table(
                    columns("Bound", "asked"), shown.stream().map(this::bound).toList()));
        }
        int rest = all.size() - shown.size();
        if (rest > 0) {
            blocks.add(new Paragraph(rest + " more are kept and are not asked alike of all; --json has them."));
        }
    }

    private static String kept(Item item) {
        var bounds = item.asked() == 1 ? "its one bound" : "its " + item.asked() + " bounds";
        var known = item.notKnown() == 0 ? "" : "; " + item.notKnown() + " could not be measured";
        return (item.broken() == 0
                        ? (item.notKnown() == 0 ? "keeps all of " : "breaks none of ")
                        : "breaks " + item.broken() + " of ")
                + bounds + known + ".";
    }

    private static boolean isBroken(BoundRow row) {
        return row.of().stream().anyMatch(each -> each != null && Boolean.FALSE.equals(each.met()));
    }

    private List<String> bound(BoundRow row) {
        var limits = row.of().stream()
                .map(asked -> asked == null ? "" : limit(asked))
                .distinct()
                .toList();
        boolean alike = limits.size() == 1;
        var cells = new ArrayList<>(List.of(row.title(), alike ? limits.get(0) : "not alike"));
        row.of()
                .forEach(asked ->
                        cells.add(asked == null ? NOTHING : words(asked) + (alike ? "" : ", " + limit(asked))));
        return cells;
    }

    private static String words(Asked asked) {
        var value = asked.value();
        if (value == null) {
            return asked.met() == null ? UNKNOWN : "nothing there";
        }
        var number = asked.min() == null || isOver(value, asked.max()) ? asked.max() : asked.min();
        boolean broken = Boolean.FALSE.equals(asked.met());
        int digits = broken && number != null ? Figures.digitsApart(value, number, DIGITS) : DIGITS;
        return Figures.significant(value, digits) + (broken ? " BROKEN" : "");
    }

    private static boolean isOver(BigFraction value, @Nullable BigFraction max) {
        return max != null && value.compareTo(max) > 0;
    }

    private static String limit(Asked asked) {
        var min = asked.min();
        var max = asked.max();
        if (min != null && max != null) {
            return Figures.exactly(min, "") + " to " + Figures.exactly(max, asked.unit());
        }
        return min == null
                ? told(max, each -> "at most " + Figures.exactly(each, asked.unit()), "")
                : "at least " + Figures.exactly(min, asked.unit());
    }

    private void addWeights(List<Block> blocks) {
        blocks.add(new Heading("What goes in, in grams of " + result.batch()));
        var rows = new ArrayList<List<String>>();
        var stage = "";
        for (var weight : result.weights()) {
            rows.add(cells(
                    Stream.of(weight.stage().equals(stage) ? "" : weight.stage(), weight.name()),
                    weight.kilograms(),
                    kilograms -> kilograms.signum() == 0 ? NOTHING : Figures.grams(kilograms)));
            stage = weight.stage();
        }
        blocks.add(new Table(columns("Stage", "Ingredient"), rows));
    }

    private void addHoldings(List<Block> blocks) {
        if (!result.holdings().isEmpty()) {
            blocks.add(new Heading("What they hold"));
            blocks.add(new Table(
                    columns("Property", "unit"),
                    result.holdings().stream()
                            .map(held -> cells(
                                    Stream.of(held.title(), held.unit()),
                                    held.values(),
                                    value -> Figures.significant(value, DIGITS)))
                            .toList()));
        }
    }

    private static List<String> cells(
            Stream<String> before, List<@Nullable BigFraction> values, Function<BigFraction, String> words) {
        var cells = new ArrayList<>(before.toList());
        values.forEach(value -> cells.add(told(value, words, NOTHING)));
        return cells;
    }

    private void addLabels(List<Block> blocks) {
        blocks.add(new Heading("What stands on the label"));
        blocks.add(new Paragraph("Names by weight as they go in, and allergens as the ingredient set states them."));
        var points = new ArrayList<String>();
        result.items().forEach(item -> {
            var label = item.label();
            if (label != null) {
                points.add(item.name() + ", " + label.names().size() + " names: " + String.join(", ", label.names())
                        + ". " + allergens(label));
            }
        });
        result.items().stream().skip(1).forEach(item -> {
            var label = item.label();
            if (label != null) {
                points.add(item.name() + " against A: " + changes(label));
            }
        });
        blocks.add(new Points(points));
    }

    private static String allergens(Label label) {
        var unknown = label.allergensNotKnown().isEmpty()
                ? ""
                : " Not known of: " + String.join(", ", label.allergensNotKnown()) + ".";
        return "Allergens: " + (label.allergens().isEmpty() ? "none stated" : String.join(", ", label.allergens()))
                + "." + unknown;
    }

    private static String changes(Label label) {
        var words = new ArrayList<String>();
        if (!label.added().isEmpty()) {
            words.add("with " + String.join(", ", label.added()));
        }
        if (!label.gone().isEmpty()) {
            words.add("without " + String.join(", ", label.gone()));
        }
        if (label.reordered()) {
            words.add("the others in another order");
        }
        return words.isEmpty() ? "the same names in the same order." : String.join("; ", words) + ".";
    }
}
