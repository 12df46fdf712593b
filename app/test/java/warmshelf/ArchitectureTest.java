package warmshelf;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Holds the shape of the house: which kind of class, told by its name, may know what. */
@AnalyzeClasses(packages = "warmshelf", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
    private static final List<String> CLOCK_READS = List.of("now", "systemDefaultZone", "systemUTC", "system");

    @ArchTest
    static final ArchRule only_stores_know_the_database = noClasses()
            .that(areFeaturesOtherThan("Store"))
            .should()
            .dependOnClassesThat(
                    resideInAnyPackage("org.jooq..", "java.sql..", "javax.sql..", "warmshelf.db.generated.."));

    @ArchTest
    static final ArchRule only_pages_know_the_web_server = noClasses()
            .that(areFeaturesOtherThan("Pages"))
            .should()
            .dependOnClassesThat(resideInAnyPackage("io.javalin..", "jakarta.servlet..", "org.eclipse.jetty.."));

    @ArchTest
    static final ArchRule no_feature_knows_the_template_engine = noClasses()
            .that(areFeaturesOtherThan())
            .and()
            .resideOutsideOfPackage("warmshelf.words")
            .should()
            .dependOnClassesThat(resideInAnyPackage("io.pebbletemplates.."));

    @ArchTest
    static final ArchRule only_commands_know_the_command_line = noClasses()
            .that(areFeaturesOtherThan("Command"))
            .should()
            .dependOnClassesThat(resideInAnyPackage("picocli.."));

    @ArchTest
    static final ArchRule features_have_no_cycles =
            slices().matching("warmshelf.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule only_the_edge_reads_the_system_clock =
            noClasses().that(areFeaturesOtherThan("Command")).should().callMethodWhere(readsTheSystemClock());

    @ArchTest
    static void each_class_name_stands_once(JavaClasses classes) {
        Map<String, List<String>> rooms = classes.stream()
                .filter(each -> each.isTopLevelClass() && !each.getSimpleName().equals("package-info"))
                .filter(each -> !each.getPackageName().startsWith("warmshelf.db.generated"))
                .collect(Collectors.groupingBy(
                        JavaClass::getSimpleName, Collectors.mapping(JavaClass::getPackageName, Collectors.toList())));
        assertThat(rooms).allSatisfy((name, packages) -> assertThat(packages).hasSize(1));
    }

    @ArchTest
    static final ArchRule the_engine_of_plans_knows_neither_pages_nor_records = noClasses()
            .that()
            .resideInAPackage("warmshelf.plan.engine..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("warmshelf.plan", "warmshelf.web..", "warmshelf.db.."));

    /** Classes outside the web and database edges and the wiring, except those with one of the suffixes. */
    private static DescribedPredicate<JavaClass> areFeaturesOtherThan(String... suffixes) {
        return resideInAnyPackage("warmshelf.web..", "warmshelf.db..", "warmshelf")
                .negate()
                .and(DescribedPredicate.describe(
                        "not named " + List.of(suffixes), owner -> !outermostEndsWith(owner, suffixes)))
                .as("features' classes other than *%s", List.of(suffixes));
    }

    private static boolean outermostEndsWith(JavaClass owner, String... suffixes) {
        JavaClass outermost = owner;
        while (outermost.getEnclosingClass().isPresent()) {
            outermost = outermost.getEnclosingClass().get();
        }
        String name = outermost.getSimpleName();
        return List.of(suffixes).stream().anyMatch(name::endsWith);
    }

    /** {@code now()} without a clock in any class of java.time, and the making of a system clock. */
    private static DescribedPredicate<JavaCall<?>> readsTheSystemClock() {
        return DescribedPredicate.describe(
                "read the system clock",
                call -> call.getTargetOwner().getPackageName().startsWith("java.time")
                        && CLOCK_READS.contains(call.getName())
                        && call.getTarget().getRawParameterTypes().stream()
                                .noneMatch(type -> type.isEquivalentTo(Clock.class)));
    }
}
