package leat.architecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule, put to all of Leat. A rule that finds nothing to look at fails. */
@Tag("law")
class ArchitectureTest {

    private static final JavaClasses LEAT = new ClassFileImporter()
            .withImportOption(location -> !location.contains("/test-classes/"))
            .importPackages("leat");

    @ParameterizedTest
    @MethodSource
    void holds(Rule rule) {
        rule.under().apply("leat").check(LEAT);
    }

    static List<Rule> holds() {
        return Rule.all();
    }
}
