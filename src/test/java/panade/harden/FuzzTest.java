package panade.harden;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.RepeatableSeeds;

/**
 * Damaged documents of every kind: each command ends within its time, with a status and words of its own, and changes
 * nothing.
 */
@Tag("harden")
class FuzzTest {
    private static final long ATTACKS = Long.getLong("panade.attacks", 60);
    private static final long FIRST = Long.getLong("panade.attack", RepeatableSeeds.seed("FuzzTest") * 1_000_000_007L);

    @Test
    void no_damaged_document_brings_a_command_down(@TempDir Path folder) {
        var corpus = Kitchen.corpus();
        var faults = new ArrayList<String>();
        Map<String, Integer> tried = new TreeMap<>();
        for (long number = FIRST; number < FIRST + ATTACKS && faults.size() < 40; number++) {
            var attack = Attack.of(number, corpus);
            tried.merge(attack.command().replaceAll(" .*", ""), 1, Integer::sum);
            var fault = attack.fault(folder);
            if (fault != null) {
                faults.add("attack " + number + ", " + attack.command() + ": " + fault);
                System.out.println(faults.get(faults.size() - 1));
            }
            Attack.clear(folder);
            if ((number - FIRST + 1) % 1000 == 0) {
                System.out.println(number - FIRST + 1 + " tried");
            }
        }
        System.out.println(tried + ": " + sum(tried) + " damaged kitchens, " + faults.size() + " faults");
        assertThat(faults).isEqualTo(List.of());
    }

    private static int sum(Map<String, Integer> counts) {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }
}
