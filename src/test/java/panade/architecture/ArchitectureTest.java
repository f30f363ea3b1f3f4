package panade.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import panade.model.Unproved;

/** The walls of the house. */
@AnalyzeClasses(packages = "panade", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    @ArchTest
    static final ArchRule packages_have_no_cycles =
            slices().matching("panade.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule only_the_adapter_knows_ortools = onlyIn("panade.solver.ortools..", "com.google.ortools..");

    @ArchTest
    static final ArchRule only_the_adapter_knows_poi =
            onlyIn("panade.sheet.poi..", "org.apache.poi..", "org.openxmlformats..");

    @ArchTest
    static final ArchRule only_learning_knows_distributions =
            onlyIn("panade.learn..", "org.apache.commons.statistics..");

    @ArchTest
    static final ArchRule only_the_page_knows_templates = onlyIn("panade.page..", "gg.jte..");

    @ArchTest
    static final ArchRule only_the_manual_knows_markdown = onlyIn("panade.manual..", "org.commonmark..");

    @ArchTest
    static final ArchRule only_the_server_knows_http = onlyIn("panade.serve..", "com.sun.net.httpserver..");

    @ArchTest
    static final ArchRule only_the_command_line_knows_picocli = onlyIn("panade.cli..", "picocli..");

    @ArchTest
    static final ArchRule only_readers_and_writers_know_jackson = noClasses()
            .that()
            .resideOutsideOfPackages("panade.document..", "panade.export..", "panade.intake..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("tools.jackson..", "org.apache.commons.csv..");

    @ArchTest
    static final ArchRule only_the_command_line_prints = noClasses()
            .that()
            .resideOutsideOfPackage("panade.cli..")
            .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS);

    /** What ends work for want of a proof becomes a third answer at one border, and steers nothing below it. */
    @ArchTest
    static final ArchRule what_is_unproved_is_caught_only_where_it_becomes_an_answer = classes()
            .that()
            .resideOutsideOfPackages("panade.plan", "panade.cli")
            .should(new ArchCondition<JavaClass>("not catch Unproved") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    type.getCodeUnits().stream()
                            .flatMap(unit -> unit.getTryCatchBlocks().stream())
                            .filter(block -> block.getCaughtThrowables().stream()
                                    .anyMatch(caught -> caught.isEquivalentTo(Unproved.class)))
                            .forEach(block -> events.add(SimpleConditionEvent.violated(
                                    type, type.getName() + " catches it at " + block.getSourceCodeLocation())));
                }
            });

    @ArchTest
    static final ArchRule fields_are_final = fields().that()
            .areDeclaredInClassesThat()
            .resideOutsideOfPackages(
                    "panade.cli..",
                    "panade.certify..",
                    "panade.padic..",
                    "panade.document..",
                    "panade.intake..",
                    "panade.sheet..",
                    "panade.scenario..")
            .and()
            .areDeclaredInClassesThat()
            .haveNameNotMatching(".*[.](Lazy|LinearForm([$]Terms)?)")
            .should()
            .beFinal()
            .because("values are immutable; only options, pivots, parsers in progress and what is put off change");

    @ArchTest
    static final ArchRule names_say_what_a_class_is =
            noClasses().should().haveNameMatching(".*(Util|Utils|Helper|Manager|Impl)");

    @ArchTest
    static final ArchRule decimals_stay_exact = classes()
            .that()
            .resideOutsideOfPackages("panade.solver.ortools..", "panade.scenario..")
            .should(notMentionBinaryFloatingPoint());

    private static ArchRule onlyIn(String home, String... libraries) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(home)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(libraries);
    }

    @ArchTest
    void packages_are_null_marked(JavaClasses classes) {
        var unmarked = classes.getPackage("panade").getSubpackagesInTree().stream()
                .filter(each -> !each.getClasses().isEmpty())
                .filter(each -> !each.isAnnotatedWith(NullMarked.class))
                .map(JavaPackage::getName);
        assertThat(unmarked).isEmpty();
    }

    @ArchTest
    void rules_are_not_checked_against_nothing(JavaClasses classes) {
        assertThat(classes.size()).isGreaterThan(60);
    }

    private static ArchCondition<JavaClass> notMentionBinaryFloatingPoint() {
        return new ArchCondition<>("not mention double or float in fields or signatures") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                var fieldTypes = type.getFields().stream().map(field -> field.getRawType());
                var codeTypes = type.getCodeUnits().stream()
                        .flatMap(code -> Stream.concat(
                                Stream.of(code.getRawReturnType()), code.getRawParameterTypes().stream()));
                Stream.concat(fieldTypes, codeTypes)
                        .filter(ArchitectureTest::isBinary)
                        .forEach(found -> events.add(
                                SimpleConditionEvent.violated(type, type.getName() + " mentions " + found.getName())));
            }
        };
    }

    private static boolean isBinary(JavaClass type) {
        var name = type.getBaseComponentType().getName();
        return name.equals("double")
                || name.equals("float")
                || name.equals("java.lang.Double")
                || name.equals("java.lang.Float");
    }
}
