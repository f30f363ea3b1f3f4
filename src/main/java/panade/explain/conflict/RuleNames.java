package panade.explain.conflict;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import panade.domain.Rule;

/** What a result calls a rule: its own words, as near to the brief as can be. */
public final class RuleNames {
    private RuleNames() {}

    /** The rule's name. */
    public static String of(Rule rule) {
        if (rule instanceof Rule.WhenUsed whenUsed) {
            return joined(whenUsed.ingredients(), ", ") + " when used, min "
                    + whenUsed.min().text();
        }
        if (rule instanceof Rule.Choose choose) {
            return "choose among " + first(choose.options(), ", ") + limit(", min ", choose.min())
                    + limit(", max ", choose.max());
        }
        if (rule instanceof Rule.IfThen ifThen) {
            return "if " + first(ifThen.when(), " or ") + " then " + first(ifThen.then(), " or ");
        }
        if (rule instanceof Rule.NeverTogether never) {
            return "never together: " + first(never.options(), ", ");
        }
        return "maxIngredients " + ((Rule.MostNames) rule).max();
    }

    private static String limit(String words, @Nullable Integer number) {
        return number == null ? "" : words + number;
    }

    /** Options by the ingredient they were named for. */
    private static String first(List<Set<String>> options, String between) {
        return options.stream().map(option -> option.iterator().next()).collect(Collectors.joining(between));
    }

    private static String joined(Collection<String> ids, String between) {
        return String.join(between, ids);
    }
}
