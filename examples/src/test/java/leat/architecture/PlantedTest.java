package leat.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule names each planted class, method and field whose name starts with "bad", and none that starts with "good". */
@Tag("law")
class PlantedTest {

    @ParameterizedTest
    @MethodSource
    void catchesWhatIsPlanted(Rule rule) {
        String root = "leat.architecture.planted." + rule.name();
        JavaClasses planted = new ClassFileImporter().importPackages(root);
        String report =
                rule.under().apply(root).evaluate(planted).getFailureReport().toString();

        assertFalse(named("bad", planted).isEmpty(), "nothing is planted under " + root);
        assertEquals(named("bad", planted), mentioned(named("bad", planted), report), report);
        assertEquals(new TreeSet<>(), mentioned(named("good", planted), report), report);
    }

    static List<Rule> catchesWhatIsPlanted() {
        return Rule.all();
    }

    private static SortedSet<String> named(String start, JavaClasses planted) {
        return planted.stream()
                .flatMap(type -> Stream.concat(
                        Stream.of(type.getSimpleName()).filter(name -> hasPrefix(name, start)),
                        members(type)
                                .filter(name -> hasPrefix(name, start))
                                .map(name -> type.getSimpleName() + "." + name)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stream<String> members(JavaClass type) {
        return type.getMembers().stream().map(HasName::getName);
    }

    private static boolean hasPrefix(String name, String start) {
        return name.regionMatches(true, 0, start, 0, start.length());
    }

    private static SortedSet<String> mentioned(SortedSet<String> names, String report) {
        return names.stream()
                .filter(name -> report.matches("(?s).*\\b" + name.replace(".", "\\.") + "\\b.*"))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
