package leat.architecture;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.lang.ArchRule;
import java.util.List;

/** Who may use whom and what. */
final class Boundaries {

    private Boundaries() {}

    static List<Rule> rules() {
        return List.of(
                new Rule("files", Boundaries::noFiles),
                new Rule("document", Boundaries::noDocument),
                new Rule(
                        "jackson",
                        root -> only(root, "document", "tools.jackson..", "com.fasterxml..")
                                .because("files have one door, and its faults one wording")),
                new Rule(
                        "polyglot",
                        root -> only(root, "script", "org.graalvm..", "jdk.jshell..")
                                .because(
                                        "the language of scripts can then be exchanged, and model and calc embedded without one")),
                new Rule(
                        "spark",
                        root -> only(root, "spark", "org.apache.spark..", root + ".library..")
                                .because("a sweep on one machine must not need it")),
                new Rule("jts", Boundaries::geometryLibraryInside),
                new Rule("neighbours", Boundaries::internalIsPrivate),
                new Rule("assess", Boundaries::onlyAssessRunsServices),
                new Rule("cycles", Boundaries::noCycles));
    }

    private static ArchRule noFiles(String root) {
        return noClasses()
                .that()
                .resideInAnyPackage(root + ".model..", root + ".calc..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.io..",
                        "java.nio.file..",
                        "java.nio.channels..",
                        "java.net..",
                        "java.sql..",
                        "java.util.logging..",
                        "de.siegmar.fastcsv..")
                .orShould()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .accessField(System.class, "in")
                .orShould()
                .callMethodWhere(
                        target(nameMatching("printStackTrace")).and(target(owner(assignableTo(Throwable.class)))))
                .because("a design must come out the same wherever it is computed, and a sweep computes millions");
    }

    private static ArchRule noDocument(String root) {
        return noClasses()
                .that()
                .resideInAnyPackage(root + ".model..", root + ".calc..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(root + ".document..")
                .because("it reads and writes, and a rule against I/O sees direct use only");
    }

    private static ArchRule only(String root, String home, String... libraries) {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .and()
                .resideOutsideOfPackages(root + "." + home + "..", root + ".library..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(libraries);
    }

    private static ArchRule geometryLibraryInside(String root) {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .and()
                .resideOutsideOfPackage(root + ".calc..internal..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.locationtech.jts..")
                .because("shapes in our own words outlive the library, and its geometries can be changed by anyone");
    }

    private static ArchRule internalIsPrivate(String root) {
        return classes()
                .that()
                .resideInAPackage(root + "..")
                .should(Conditions.useInternalOfTheirOwnOnly())
                .because("what lies in internal may change tomorrow");
    }

    private static ArchRule onlyAssessRunsServices(String root) {
        return noClasses()
                .that()
                .resideInAPackage(root + ".calc..")
                .and()
                .resideOutsideOfPackage(root + ".calc.assess..")
                .should(Conditions.runAnotherService())
                .because(
                        "a result that a service needs is a component of its parameters: nothing is computed twice unseen");
    }

    private static ArchRule noCycles(String root) {
        return slices().matching(root + ".(**)").should().beFreeOfCycles().because("a package can then be read alone");
    }
}
