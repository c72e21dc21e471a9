package bayfolio;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The folders tell the pipeline: a package uses those above it and none below. */
final class ArchitectureTest {
    private static final List<String> ORDER = List.of(
            "source",
            "typeface",
            "finding",
            "measure",
            "catalog",
            "fact",
            "prose",
            "model",
            "reckon",
            "explain",
            "drawing",
            "document",
            "template",
            "procedure",
            "read",
            "check",
            "edition",
            "bookings",
            "compose",
            "issue",
            "ask",
            "render",
            "publish",
            "mail",
            "survey",
            "rename",
            "start",
            "preview",
            "cli");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("bayfolio");

    @Test
    void packagesUseOnlyThoseBeforeThem() {
        TreeSet<String> backward = new TreeSet<>();
        for (JavaClass user : CLASSES) {
            user.getDirectDependenciesFromSelf().stream()
                    .map(dependency -> dependency.getTargetClass())
                    .filter(used -> used.getPackageName().startsWith("bayfolio."))
                    .filter(used -> place(used) > place(user))
                    .forEach(used -> backward.add(user.getName() + " uses " + used.getName()));
        }

        assertThat(backward).isEmpty();
    }

    @Test
    void everyPackageHasItsPlace() {
        assertThat(CLASSES).allSatisfy(each -> assertThat(place(each)).isGreaterThanOrEqualTo(0));
    }

    private static int place(JavaClass each) {
        String[] names = each.getPackageName().split("\\.");
        return names.length < 2 ? ORDER.size() : ORDER.indexOf(names[1]);
    }

    @ParameterizedTest
    @CsvSource({
        "org.snakeyaml.., bayfolio.read..",
        "com.github.mustachejava.., bayfolio.template..",
        "org.commonmark.., bayfolio.procedure..",
        "org.jsoup.., bayfolio.publish..",
        "org.apache.fontbox.., bayfolio.typeface..",
        "com.openhtmltopdf.., bayfolio.render.print..",
        "io.nayuki.., bayfolio.render.print..",
        "jakarta.mail.., bayfolio.render.mail..",
        "biweekly.., bayfolio.render.mail..",
        "ezvcard.., bayfolio.render.mail..",
        "picocli.., bayfolio.cli.."
    })
    void eachLibraryIsKnownToOnePackage(String library, String home) {
        noClasses()
                .that()
                .resideOutsideOfPackage(home)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .check(CLASSES);
    }
}
