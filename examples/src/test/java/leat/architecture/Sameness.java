package leat.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.lang.syntax.elements.ClassesShouldConjunction;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Same inputs, same bytes: what model and calc may not ask, since the answer differs from run to run. */
final class Sameness {

    /** By class, also for its subclasses: the names of methods; "new()" is the constructor without arguments. */
    private static final Map<String, Set<String>> CLOCKS_AND_SURROUNDINGS = Map.ofEntries(
            Map.entry(
                    "java.lang.System",
                    Set.of(
                            "nanoTime",
                            "currentTimeMillis",
                            "getenv",
                            "getProperty",
                            "getProperties",
                            "lineSeparator",
                            "console",
                            "identityHashCode")),
            Map.entry("java.lang.Integer", Set.of("getInteger")),
            Map.entry("java.lang.Long", Set.of("getLong")),
            Map.entry("java.lang.Boolean", Set.of("getBoolean")),
            Map.entry("java.lang.Runtime", Set.of("getRuntime")),
            Map.entry("java.time.Clock", Set.of("systemUTC", "systemDefaultZone", "system")),
            Map.entry("java.time.ZoneId", Set.of("systemDefault")),
            Map.entry("java.time.temporal.Temporal", Set.of("now")),
            Map.entry("java.time.MonthDay", Set.of("now")),
            Map.entry("java.util.Date", Set.of("new()")),
            Map.entry("java.util.Calendar", Set.of("getInstance", "new()")),
            Map.entry("java.util.TimeZone", Set.of("getDefault")),
            Map.entry("java.util.Locale", Set.of("getDefault")),
            Map.entry("java.lang.Class", Set.of("getResource", "getResourceAsStream")),
            Map.entry(
                    "java.lang.ClassLoader",
                    Set.of("getResource", "getResources", "getResourceAsStream", "getSystemResource", "resources")));

    private static final Map<String, Set<String>> CHANCE = Map.of(
            "java.lang.Math", Set.of("random"),
            "java.lang.StrictMath", Set.of("random"),
            "java.util.Random", Set.of("new()"),
            "java.util.SplittableRandom", Set.of("new()"),
            "java.util.concurrent.ThreadLocalRandom", Set.of("current"),
            "java.security.SecureRandom", Set.of("new()", "getInstance", "getInstanceStrong"),
            "java.util.random.RandomGenerator", Set.of("getDefault", "of"),
            "java.util.UUID", Set.of("randomUUID"),
            "java.util.Collections", Set.of("shuffle(java.util.List)"));

    private static final Map<String, Set<String>> THREADS = Map.of(
            "java.util.Collection", Set.of("parallelStream"),
            "java.util.stream.BaseStream", Set.of("parallel"),
            "java.util.Arrays", Set.of("parallelSort", "parallelPrefix", "parallelSetAll"));

    private Sameness() {}

    static List<Rule> rules() {
        return List.of(
                new Rule(
                        "clocks",
                        root -> never(root, "ask a clock or the surroundings", CLOCKS_AND_SURROUNDINGS)
                                .because("same inputs give the same bytes, on any machine, at any time")),
                new Rule(
                        "chance",
                        root -> never(root, "throw dice without a stated seed", CHANCE)
                                .because("a plan that cannot be computed again cannot be checked")),
                new Rule(
                        "parallel",
                        root -> never(root, "go parallel", THREADS)
                                .orShould()
                                .dependOnClassesThat(DescribedPredicate.describe(
                                        "start threads",
                                        used -> Set.of(
                                                        "java.util.concurrent.ForkJoinPool",
                                                        "java.util.concurrent.CompletableFuture",
                                                        "java.util.concurrent.Executors",
                                                        "java.util.concurrent.ExecutorService",
                                                        "java.lang.Thread")
                                                .contains(used.getName())))
                                .because("parallel work belongs to studies, which run whole designs side by side")),
                new Rule(
                        "locale",
                        root -> never(
                                        root,
                                        "format in the reader's locale",
                                        Map.of(
                                                "java.lang.String",
                                                Set.of("format(java.lang.String, [Ljava.lang.Object;)", "formatted")))
                                .because(
                                        "a figure would be written with a comma on one machine and a point on another")));
    }

    private static ClassesShouldConjunction never(String root, String deed, Map<String, Set<String>> banned) {
        return noClasses()
                .that()
                .resideInAnyPackage(root + ".model..", root + ".calc..")
                .should()
                .accessTargetWhere(DescribedPredicate.describe(deed, access -> isBanned(access, banned)));
    }

    private static boolean isBanned(JavaAccess<?> access, Map<String, Set<String>> banned) {
        return banned.entrySet().stream()
                .filter(entry -> access.getTargetOwner().isAssignableTo(entry.getKey()))
                .anyMatch(entry -> names(access).stream().anyMatch(entry.getValue()::contains));
    }

    /** The name alone, and with the types of the parameters. */
    private static List<String> names(JavaAccess<?> access) {
        String target = access.getTarget().getFullName();
        String withParameters =
                target.substring(access.getTargetOwner().getName().length() + 1);
        return List.of(access.getName(), withParameters.replace(JavaConstructor.CONSTRUCTOR_NAME, "new"));
    }
}
