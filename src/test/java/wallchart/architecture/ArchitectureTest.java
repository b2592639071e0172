package wallchart.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The shape that DEVELOPERS.md promises; each rule is shown to bite on a planted violation. */
class ArchitectureTest {

    private static final JavaClasses OURS = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("wallchart");
    private static final JavaClasses PLANTED = new ClassFileImporter().importPackages("wallchart.architecture.planted");
    private static final int LONGEST_FILE = 400;

    @Test
    void packages_use_only_what_the_table_of_the_developers_page_allows() throws IOException {
        assertThat(new Dependencies(OURS, "wallchart").violations(DependencyTable.ofDevelopersPage()))
                .isEmpty();
    }

    @Test
    void the_table_names_exactly_the_packages_there_are() throws IOException {
        assertThat(new Dependencies(OURS, "wallchart").features())
                .isEqualTo(DependencyTable.ofDevelopersPage().mayUse().keySet());
    }

    @Test
    void a_planted_dependency_is_noticed() throws IOException {
        assertThat(new Dependencies(PLANTED, "wallchart.architecture.planted")
                        .violations(DependencyTable.ofDevelopersPage()))
                .anySatisfy(violation -> assertThat(violation).startsWith("quantity may not use web"));
    }

    @Test
    void a_table_that_looks_down_is_refused() {
        var page = "<!-- dependencies -->\n```\nchart web\nweb\n```\n<!-- /dependencies -->";

        assertThatThrownBy(() -> DependencyTable.parse(page)).hasMessageContaining("rows above");
    }

    @Test
    void there_are_no_cycles() {
        slices().matching("wallchart.(*)..").should().beFreeOfCycles().check(OURS);
    }

    @Test
    void javalin_is_spoken_only_in_web() {
        onlyIn("io.javalin..", "wallchart.web..", "wallchart").check(OURS);
    }

    @Test
    void flyway_and_the_connection_pool_stay_in_the_store() {
        onlyIn("org.flywaydb..", "wallchart.store..").check(OURS);
        onlyIn("com.zaxxer..", "wallchart.store..").check(OURS);
    }

    @Test
    void pdf_and_square_codes_are_written_only_where_sheets_are_printed() {
        for (var library : List.of("com.lowagie..", "io.nayuki..")) {
            onlyIn(library, "wallchart.print..").check(OURS);
            assertThat(onlyIn(library, "wallchart.print..").evaluate(PLANTED).hasViolation())
                    .as(library)
                    .isTrue();
        }
    }

    @Test
    void sql_is_spoken_only_in_the_store_and_in_package_private_store_and_columns_classes() {
        speaksSql().check(OURS);
        assertThat(speaksSql().evaluate(PLANTED).hasViolation()).isTrue();
    }

    private static ArchRule speaksSql() {
        return noClasses()
                .that(DescribedPredicate.describe(
                        "are neither of the store package nor package-private …Store or …Columns classes",
                        (JavaClass type) ->
                                !type.getPackageName().startsWith("wallchart.store") && !isPrivateStore(type)))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.jdbi..");
    }

    private static boolean isPrivateStore(JavaClass type) {
        var outermost = type.getEnclosingClass().orElse(type);
        return outermost.getSimpleName().matches("\\w+(Store|Columns)")
                && !outermost.getModifiers().contains(JavaModifier.PUBLIC);
    }

    @Test
    void nobody_asks_the_wall_clock() {
        wallClock().check(OURS);
        assertThat(wallClock().evaluate(PLANTED).hasViolation()).isTrue();
    }

    @Test
    void quantities_physics_and_technique_touch_neither_database_nor_clock_nor_files() {
        pure("wallchart.").check(OURS);
        assertThat(pure("wallchart.architecture.planted.").evaluate(PLANTED).hasViolation())
                .isTrue();
    }

    @Test
    void no_file_is_longer_than_400_lines() throws IOException {
        try (var files = Files.walk(Path.of("src"))) {
            var sources =
                    files.filter(file -> file.toString().endsWith(".java")).toList();
            assertThat(sources).hasSizeGreaterThan(100).allSatisfy(file -> assertThat(Files.readAllLines(file))
                    .as(file.toString())
                    .hasSizeLessThanOrEqualTo(LONGEST_FILE));
        }
    }

    private static ArchRule onlyIn(String library, String... homes) {
        return noClasses()
                .that()
                .resideOutsideOfPackages(homes)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library);
    }

    private static ArchRule wallClock() {
        var clocks = Set.of(
                "java.time.Instant", "java.time.LocalDate", "java.time.LocalDateTime", "java.time.ZonedDateTime");
        return noClasses()
                .should()
                .callMethodWhere(DescribedPredicate.describe(
                        "the wall clock is asked",
                        (JavaCall<?> call) -> call.getTarget().getName().equals("now")
                                && clocks.contains(call.getTargetOwner().getName())
                                && call.getTarget().getRawParameterTypes().isEmpty()));
    }

    private static ArchRule pure(String root) {
        var pure = List.of("quantity", "physics", "technique").stream()
                .map(feature -> root + feature + "..")
                .toArray(String[]::new);
        return noClasses()
                .that()
                .resideInAnyPackage(pure)
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "reach for database, clock or files",
                        (JavaClass type) -> type.getPackageName().startsWith("java.sql")
                                || type.getPackageName().startsWith("java.nio.file")
                                || type.getName().equals("java.time.Clock")));
    }
}
