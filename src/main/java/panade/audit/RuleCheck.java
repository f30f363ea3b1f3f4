package panade.audit;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Brief;
import panade.domain.Rule;
import panade.quantity.Quantity;

/** Counts what a blend uses and says which rules that breaks. */
final class RuleCheck {
    private static final BigFraction LEAST_USE =
            Quantity.parse(Rule.LEAST_USE).orElseThrow().base();

    private final Brief brief;
    private final Ledger ledger;

    RuleCheck(Brief brief, Ledger ledger) {
        this.brief = brief;
        this.ledger = ledger;
    }

    List<String> faults() {
        return brief.practice().rules().stream().flatMap(this::faults).toList();
    }

    private Stream<String> faults(Rule rule) {
        if (rule instanceof Rule.WhenUsed whenUsed) {
            return whenUsed.ingredients().stream()
                    .filter(id -> isUsed(id) && below(id, whenUsed.min().base()))
                    .map(id -> "uses less of " + name(id) + " than "
                            + whenUsed.min().text());
        }
        return told(rule).stream();
    }

    private Optional<String> told(Rule rule) {
        if (rule instanceof Rule.Choose choose) {
            return told(choose);
        }
        if (rule instanceof Rule.IfThen then) {
            boolean broken = used(then.when()) > 0 && ample(then.then()) == 0;
            return broken
                    ? Optional.of("uses " + inUse(then.when()) + " without any of " + named(then.then()))
                    : Optional.empty();
        }
        if (rule instanceof Rule.NeverTogether never) {
            return used(never.options()) > 1
                    ? Optional.of("uses " + inUse(never.options()) + " together, which the brief keeps apart")
                    : Optional.empty();
        }
        int most = ((Rule.MostNames) rule).max();
        return names() > most
                ? Optional.of("shows " + names() + " names on the label, " + most + " allowed")
                : Optional.empty();
    }

    private Optional<String> told(Rule.Choose choose) {
        var min = choose.min();
        var max = choose.max();
        if (max != null && used(choose.options()) > max) {
            return Optional.of(
                    "uses " + inUse(choose.options()) + ", where the brief allows " + max + " of these at most");
        }
        return min != null && ample(choose.options()) < min
                ? Optional.of("uses fewer than " + min + " of " + named(choose.options()))
                : Optional.empty();
    }

    private long used(List<Set<String>> options) {
        return toBeHad(options)
                .filter(option -> option.stream().anyMatch(this::isUsed))
                .count();
    }

    /** Names of what is used of the options. */
    private String inUse(List<Set<String>> options) {
        return toBeHad(options)
                .flatMap(Set::stream)
                .distinct()
                .filter(this::isUsed)
                .sorted()
                .map(this::name)
                .collect(Collectors.joining(" and "));
    }

    /** Names of the options, each by the ingredient that it was named for. */
    private String named(List<Set<String>> options) {
        return options.stream().map(option -> name(option.iterator().next())).collect(Collectors.joining(", "));
    }

    private String name(String id) {
        return brief.set().ingredient(id).name();
    }

    /** Options as far as they may be used; what comes to the same then counts once. */
    private Stream<Set<String>> toBeHad(List<Set<String>> options) {
        return options.stream()
                .map(option -> {
                    var there = new HashSet<>(option);
                    there.retainAll(brief.candidates());
                    return (Set<String>) there;
                })
                .filter(option -> !option.isEmpty())
                .distinct();
    }

    /** How many of the options are used where a rule asks for use. */
    private long ample(List<Set<String>> options) {
        return toBeHad(options).filter(this::isAmple).count();
    }

    private boolean isAmple(Set<String> option) {
        var there = option.stream().map(ledger::ofIngredient).reduce(BigFraction.ZERO, BigFraction::add);
        return there.compareTo(enough(option)) >= 0;
    }

    /** The least that counts as used of an option: the smallest that a rule asks of any of it, or a trace. */
    private BigFraction enough(Set<String> option) {
        return option.stream()
                .flatMap(id -> asked(id).stream())
                .min(Comparator.naturalOrder())
                .orElse(LEAST_USE);
    }

    /** The most that rules ask of an ingredient where it is used. */
    private Optional<BigFraction> asked(String id) {
        return brief.practice().rules().stream()
                .filter(rule -> rule instanceof Rule.WhenUsed whenUsed
                        && whenUsed.ingredients().contains(id))
                .map(rule -> ((Rule.WhenUsed) rule).min().base())
                .max(Comparator.naturalOrder());
    }

    private long names() {
        return brief.set().ingredients().values().stream()
                .filter(ingredient -> isUsed(ingredient.id()))
                .map(ingredient -> ingredient.label())
                .distinct()
                .count();
    }

    private boolean isUsed(String id) {
        return ledger.ofIngredient(id).signum() > 0;
    }

    private boolean below(String id, BigFraction least) {
        return ledger.ofIngredient(id).compareTo(least) < 0;
    }
}
