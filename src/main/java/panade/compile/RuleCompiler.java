package panade.compile;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.compile.CompiledChoice.Floor;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Measure;
import panade.domain.Rule;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/**
 * Adds a brief's rules to its model. A switch is nought or one for an option; it is one if any of the option is used,
 * and where a rule asks for use it is one only if enough of it is (Williams, "Model Building in Mathematical
 * Programming", 5th ed. 2013, chapter 9, from memory).
 */
public final class RuleCompiler {
    private static final Quantity LEAST_USE = Quantity.parse(Rule.LEAST_USE).orElseThrow();

    private final Brief brief;
    private final CompiledBrief compiled;
    private final Extent extent;
    private final List<Column> columns;
    private final List<Row> rows;
    private final Map<Set<String>, Integer> used = new LinkedHashMap<>();
    private final Map<Set<String>, Integer> ample = new LinkedHashMap<>();
    private final List<Floor> floors = new ArrayList<>();
    private final Map<String, Rule.WhenUsed> leastUse = new TreeMap<>();

    private RuleCompiler(Brief brief, CompiledBrief compiled, Extent extent) {
        this.brief = brief;
        this.compiled = compiled;
        this.extent = extent;
        this.columns = new ArrayList<>(compiled.model().columns());
        this.rows = new ArrayList<>(compiled.model().rows());
    }

    /**
     * The model of a brief with rules.
     *
     * @param compiled the brief without its rules
     * @param extent how much there can be of an option; the tighter, the sooner a proof ends
     */
    public static CompiledChoice compile(Brief brief, CompiledBrief compiled, Extent extent) {
        var compiler = new RuleCompiler(brief, compiled, extent);
        brief.practice().rules().forEach(compiler::noteLeastUse);
        compiler.leastUse.forEach(compiler::addLeastUse);
        brief.practice().rules().forEach(compiler::add);
        var switches = new HashMap<Integer, Set<String>>();
        compiler.used.forEach((option, column) -> switches.put(column, option));
        var whole = new HashSet<>(switches.keySet());
        whole.addAll(compiler.ample.values());
        var model = new MixedModel(new LinearModel(compiler.columns, compiler.rows), whole);
        return new CompiledChoice(model, switches, compiler.floors);
    }

    private void add(Rule rule) {
        if (rule instanceof Rule.Choose choose) {
            addChoose(choose);
        } else if (rule instanceof Rule.IfThen ifThen) {
            addIfThen(ifThen);
        } else if (rule instanceof Rule.NeverTogether never) {
            atMost(never.path(), usedColumns(never.options()), 1);
        } else if (rule instanceof Rule.MostNames names) {
            atMost(names.path(), usedColumns(names()), names.max());
        }
    }

    /** The candidates by name on the label. */
    private List<Set<String>> names() {
        var byLabel = brief.candidates().stream()
                .collect(Collectors.groupingBy(
                        id -> brief.set().ingredient(id).label(), TreeMap::new, Collectors.toCollection(TreeSet::new)));
        return byLabel.values().stream().map(ids -> (Set<String>) ids).toList();
    }

    private void noteLeastUse(Rule rule) {
        if (rule instanceof Rule.WhenUsed whenUsed) {
            whenUsed.ingredients().stream()
                    .filter(brief.candidates()::contains)
                    .forEach(id -> leastUse.merge(id, whenUsed, RuleCompiler::larger));
        }
    }

    private static Rule.WhenUsed larger(Rule.WhenUsed a, Rule.WhenUsed b) {
        return a.min().base().compareTo(b.min().base()) < 0 ? b : a;
    }

    private void addLeastUse(String id, Rule.WhenUsed rule) {
        var option = Set.of(id);
        int column = usedColumn(option);
        addFloor(column, option, rule.min(), rule);
    }

    private void addFloor(int column, Set<String> option, Quantity least, Rule rule) {
        var form = form(option).plus(column, least.base().negate());
        rows.add(new Row(rule.path(), form, Sense.AT_LEAST, BigFraction.ZERO));
        var name = String.join("+", option) + " when used, min " + least.text();
        var weights = option.stream().collect(Collectors.toMap(id -> id, id -> BigFraction.ONE));
        var part = new Measure.Part(Map.of(), weights, null);
        var names = option.stream()
                .map(id -> brief.set().ingredient(id).name())
                .sorted()
                .collect(Collectors.joining(" or "));
        var of = new Measure(names + " when used, min " + least.text(), Unit.PERCENT, List.of(part));
        floors.add(new Floor(
                column, new Bound(LimitKind.RULE, name, rule.path(), of, null, least, null, "raw", rule.origin())));
    }

    private void addChoose(Rule.Choose choose) {
        if (choose.max() != null) {
            atMost(choose.path(), usedColumns(choose.options()), choose.max());
        }
        if (choose.min() != null && choose.min() > 0) {
            atLeast(choose, choose.options(), choose.min());
        }
    }

    private void addIfThen(Rule.IfThen rule) {
        for (int when : usedColumns(rule.when())) {
            var form = LinearForm.sumOf(ampleColumns(rule.then(), rule)).plus(when, BigFraction.ONE.negate());
            rows.add(new Row(rule.path(), form, Sense.AT_LEAST, BigFraction.ZERO));
        }
    }

    private void atMost(String path, List<Integer> switches, int number) {
        rows.add(new Row(path, LinearForm.sumOf(switches), Sense.AT_MOST, BigFraction.of(number)));
    }

    private void atLeast(Rule rule, List<Set<String>> options, int number) {
        rows.add(new Row(
                rule.path(), LinearForm.sumOf(ampleColumns(options, rule)), Sense.AT_LEAST, BigFraction.of(number)));
    }

    /** Switches of the options of which anything can be had. */
    private List<Integer> usedColumns(List<Set<String>> options) {
        return options.stream()
                .map(this::candidatesOf)
                .filter(option -> !option.isEmpty())
                .map(this::usedColumn)
                .toList();
    }

    private Set<String> candidatesOf(Set<String> option) {
        var there = new TreeSet<>(option);
        there.retainAll(brief.candidates());
        return there;
    }

    private int usedColumn(Set<String> option) {
        return used.computeIfAbsent(option, key -> {
            int column = newSwitch("uses " + String.join("+", key));
            var share = form(key);
            rows.add(new Row("uses", share.plus(column, extent.most(share).negate()), Sense.AT_MOST, BigFraction.ZERO));
            if (extent.least(share).signum() > 0) {
                rows.add(MixedModel.limit(column, Sense.AT_LEAST, BigInteger.ONE));
            }
            return column;
        });
    }

    private List<Integer> ampleColumns(List<Set<String>> options, Rule rule) {
        return options.stream()
                .map(this::candidatesOf)
                .filter(option -> !option.isEmpty())
                .map(option -> ampleColumn(option, rule))
                .toList();
    }

    /** One only if enough of the option is used to count where use is asked for. */
    private int ampleColumn(Set<String> option, Rule rule) {
        if (option.size() == 1 && leastUse.containsKey(option.iterator().next())) {
            return usedColumn(option);
        }
        return ample.computeIfAbsent(option, key -> {
            int column = newSwitch("uses enough of " + String.join("+", key));
            var enough = key.stream()
                    .flatMap(id -> Stream.ofNullable(leastUse.get(id)))
                    .map(Rule.WhenUsed::min)
                    .min(Comparator.comparing(Quantity::base))
                    .orElse(LEAST_USE);
            addFloor(column, key, enough, rule);
            return column;
        });
    }

    private int newSwitch(String name) {
        int column = columns.size();
        columns.add(new Column(name, BigFraction.ZERO));
        rows.add(MixedModel.limit(column, Sense.AT_MOST, BigInteger.ONE));
        return column;
    }

    private LinearForm form(Set<String> option) {
        return option.stream().map(compiled::shareOf).reduce(LinearForm.ZERO, LinearForm::plus);
    }
}
