package leat.architecture;

import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * One rule of the architecture.
 *
 * @param name  also the package of its planted violations
 * @param under the rule itself, for all that lies under a root package
 */
record Rule(String name, Function<String, ArchRule> under) {

    static List<Rule> all() {
        return Stream.of(Boundaries.rules(), Sameness.rules(), Shapes.rules())
                .flatMap(List::stream)
                .toList();
    }

    @Override
    public String toString() {
        return name;
    }
}
