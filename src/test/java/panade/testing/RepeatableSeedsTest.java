package panade.testing;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.security.SecureRandom;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.concurrent.ThreadLocalRandom;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Whether the default run draws the same every time. */
class RepeatableSeedsTest {
    /** What the seed of this property's name gives. */
    private static final long FIRST = 21_141;

    @Property(tries = 1, edgeCases = EdgeCasesMode.NONE)
    void the_default_run_draws_the_same_number_every_time(@ForAll long drawn) {
        boolean isDefault = System.getProperty(RepeatableSeeds.SEED, "").isEmpty();
        assertThat(isDefault ? drawn : FIRST).isEqualTo(FIRST);
    }

    @Example
    void nothingDrawsFromASourceWithoutASeed() {
        noClasses()
                .that()
                .areNotAssignableTo(RepeatableSeeds.class)
                .and()
                .areNotAssignableTo(RepeatableSeedsTest.class)
                .and()
                // the key of a page that is served must not be guessed; no answer is drawn from it
                .resideOutsideOfPackage("panade.serve")
                .should()
                .callConstructor(Random.class)
                .orShould()
                .callConstructor(SplittableRandom.class)
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .dependOnClassesThat()
                .belongToAnyOf(ThreadLocalRandom.class, SecureRandom.class)
                .check(new ClassFileImporter().importPackages("panade"));
    }
}
