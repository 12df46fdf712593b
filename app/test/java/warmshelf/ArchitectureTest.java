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
import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import warmshelf.web.Respond;

/** Holds the shape of the house: which kind of class, told by its name, may know what. */
@AnalyzeClasses(packages = "warmshelf", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
    private static final List<String> CLOCK_READS = List.of("now", "systemDefaultZone", "systemUTC", "system");

    private static final DescribedPredicate<JavaClass> IS_WEB_OR_HTTP =
            resideInAnyPackage("warmshelf.web..", "java.net.http..", "com.sun.net.httpserver..");

    /** Three stores that answer what the web room asks for by interfaces of its own, and what sends to push services. */
    private static final List<String> KNOW_THE_WEB_ALL_THE_SAME =
            List.of("SessionStore", "SubmissionStore", "AddressedSiteStore", "PushSender");

    private static final int LINES_OF_PAGES = 200;

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
    static final ArchRule no_core_knows_the_web_or_http = noClasses()
            .that(areFeaturesOtherThan("Pages", "Page", "Room", "News", "View"))
            .and()
            .resideOutsideOfPackage("warmshelf.demo")
            .and(DescribedPredicate.not(belongTo(KNOW_THE_WEB_ALL_THE_SAME)))
            .should()
            .dependOnClassesThat(IS_WEB_OR_HTTP);

    @ArchTest
    static void what_knows_the_web_all_the_same_has_to(JavaClasses classes) {
        assertThat(KNOW_THE_WEB_ALL_THE_SAME)
                .allSatisfy(name -> assertThat(classes)
                        .as("%s is there and knows the web; else take its name away", name)
                        .anyMatch(each -> belongTo(List.of(name)).test(each)
                                && each.getDirectDependenciesFromSelf().stream()
                                        .anyMatch(known -> IS_WEB_OR_HTTP.test(known.getTargetClass()))));
    }

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

    /** But an hour of the day, which one form reads and nothing else writes. */
    @ArchTest
    static final ArchRule only_words_say_how_days_are_written = noClasses()
            .that()
            .resideOutsideOfPackage("warmshelf.words")
            .and()
            .doNotHaveSimpleName("HoursForm")
            .should()
            .callMethod(DateTimeFormatter.class, "ofPattern", String.class)
            .orShould()
            .callMethod(DateTimeFormatter.class, "ofPattern", String.class, Locale.class);

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
    static final ArchRule a_page_is_a_record_and_its_template = noClasses()
            .that()
            .doNotBelongToAnyOf(Respond.class)
            .should()
            .callMethodWhere(showsATemplateWithoutARecord());

    @ArchTest
    static void what_people_do_apart_stands_in_pages_apart(JavaClasses classes) {
        List<JavaClass> pages = classes.stream()
                .filter(each -> each.isTopLevelClass() && each.getSimpleName().endsWith("Pages"))
                .toList();
        assertThat(pages)
                .hasSizeGreaterThan(50)
                .allSatisfy(each -> assertThat(lines(each))
                        .as("lines of %s", each.getSimpleName())
                        .isLessThanOrEqualTo(LINES_OF_PAGES));
    }

    private static int lines(JavaClass type) {
        Path source = Path.of("app/main/java", type.getName().replace('.', '/') + ".java");
        try {
            return Files.readAllLines(source).size();
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    @ArchTest
    static final ArchRule the_engine_of_plans_knows_neither_pages_nor_records = noClasses()
            .that()
            .resideInAPackage("warmshelf.plan.engine..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("warmshelf.plan", "warmshelf.web..", "warmshelf.db.."));

    /** A template shown by the web server's own means, which take anything, rather than by ours, which take a record. */
    private static DescribedPredicate<JavaCall<?>> showsATemplateWithoutARecord() {
        return DescribedPredicate.describe(
                "show a template without a record",
                call -> call.getTargetOwner().isAssignableTo(Context.class)
                        && call.getName().equals("render"));
    }

    /** Classes outside the web and database edges and the wiring, except those with one of the suffixes. */
    private static DescribedPredicate<JavaClass> areFeaturesOtherThan(String... suffixes) {
        return resideInAnyPackage("warmshelf.web..", "warmshelf.db..", "warmshelf")
                .negate()
                .and(DescribedPredicate.describe(
                        "not named " + List.of(suffixes), owner -> !outermostEndsWith(owner, suffixes)))
                .as("features' classes other than *%s", List.of(suffixes));
    }

    /** Classes of these names, with all that is nested in them. */
    private static DescribedPredicate<JavaClass> belongTo(List<String> names) {
        return DescribedPredicate.describe("belong to " + names, each -> names.contains(outermostName(each)));
    }

    private static boolean outermostEndsWith(JavaClass owner, String... suffixes) {
        return List.of(suffixes).stream().anyMatch(outermostName(owner)::endsWith);
    }

    private static String outermostName(JavaClass owner) {
        JavaClass outermost = owner;
        while (outermost.getEnclosingClass().isPresent()) {
            outermost = outermost.getEnclosingClass().get();
        }
        return outermost.getSimpleName();
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
