package leat.architecture;

import static com.tngtech.archunit.core.domain.JavaModifier.FINAL;
import static com.tngtech.archunit.core.domain.JavaModifier.PUBLIC;
import static com.tngtech.archunit.core.domain.JavaModifier.STATIC;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static leat.architecture.Conditions.condition;
import static leat.architecture.Conditions.publicSignatures;
import static leat.architecture.Conditions.violation;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.NullMarked;

/** How types look. */
final class Shapes {

    private static final Set<String> BARE_NUMBERS = Set.of(
            "double",
            "float",
            "java.lang.Double",
            "java.lang.Float",
            "java.util.OptionalDouble",
            "java.util.stream.DoubleStream",
            "java.util.function.DoubleUnaryOperator",
            "java.util.function.DoubleSupplier",
            "java.util.function.ToDoubleFunction");

    private Shapes() {}

    static List<Rule> rules() {
        return List.of(
                new Rule("model", Shapes::modelTypesCannotChange),
                new Rule("services", Shapes::servicesHaveNoState),
                new Rule("quantities", Shapes::quantitiesCrossTheEdge),
                new Rule("kernels", Shapes::kernelsNameTheirUnits),
                new Rule("geometry", Shapes::noGeometryLibraryInSignatures),
                new Rule("nulls", Shapes::packagesAreNullMarked),
                new Rule("names", Shapes::publicNamesAreUnique));
    }

    /** Faults are left out: an exception family is open to subclasses, and Throwable itself can change. */
    private static ArchRule modelTypesCannotChange(String root) {
        return classes()
                .that()
                .resideInAPackage(root + ".model..")
                .and()
                .arePublic()
                .and()
                .areNotAssignableTo(Throwable.class)
                .should(condition("be records, enums, sealed or final, and never change", (type, events) -> {
                    if (!isClosed(type)) {
                        violation(events, type, "is neither record, enum, sealed nor final");
                    }
                    type.getFields().stream()
                            .filter(field -> !isConstant(field))
                            .forEach(field -> violation(events, type, "can change in " + field.getFullName()));
                }))
                .because("a value that has been checked must stay as it was");
    }

    private static boolean isClosed(JavaClass type) {
        return type.isRecord()
                || type.isEnum()
                || type.reflect().isSealed()
                || type.getModifiers().contains(FINAL);
    }

    private static boolean isConstant(JavaField field) {
        return field.getModifiers().contains(FINAL)
                && (!field.getRawType().isArray() || field.getName().startsWith("$"));
    }

    private static ArchRule servicesHaveNoState(String root) {
        return classes()
                .that()
                .resideInAPackage(root + ".calc..")
                .and(DescribedPredicate.describe("have a public static run", Conditions::isService))
                .should(condition(
                        "have no fields but constants",
                        (service, events) -> service.getFields().stream()
                                .filter(field -> !field.getModifiers().containsAll(Set.of(STATIC, FINAL)))
                                .forEach(field -> violation(events, service, "has the field " + field.getFullName()))))
                .because("what a run leaves behind would show in the next one");
    }

    /** Progress is left out: how far a run is, is a pure number and no part of a result. */
    private static ArchRule quantitiesCrossTheEdge(String root) {
        return classes()
                .that()
                .resideInAPackage(root + ".calc..")
                .and()
                .resideOutsideOfPackage(root + ".calc..internal..")
                .and()
                .arePublic()
                .and()
                .doNotHaveSimpleName("Progress")
                .should(haveNoneInSignatures(BARE_NUMBERS::contains, "take and give quantities, not bare numbers"))
                .because("a number without its unit is taken for another one sooner or later");
    }

    /** Coordinates are plain x and y: the frame is in metres everywhere. */
    private static ArchRule kernelsNameTheirUnits(String root) {
        return classes()
                .that()
                .resideInAPackage(root + ".calc..internal..")
                .and()
                .arePublic()
                .should(condition(
                        "name the unit of every number that they take",
                        (kernel, events) -> kernel.getCodeUnits().stream()
                                .filter(unit -> unit.getModifiers().contains(PUBLIC))
                                .flatMap(unit -> UnitNames.missing(unit.reflect()))
                                .forEach(name -> violation(events, kernel, "does not say the unit of " + name))))
                .because("inside there are no quantities to tell metres from millimetres");
    }

    private static ArchRule noGeometryLibraryInSignatures(String root) {
        return classes()
                .that()
                .resideInAPackage(root + "..")
                .and()
                .arePublic()
                .should(haveNoneInSignatures(
                        name -> name.startsWith("org.locationtech.jts."), "not show the geometry library"))
                .because("callers would be bound to it, and to its release");
    }

    private static ArchCondition<JavaClass> haveNoneInSignatures(Predicate<String> unwanted, String text) {
        return condition(
                text,
                (type, events) -> publicSignatures(type)
                        .filter(signature -> signature.typeNames().stream().anyMatch(unwanted))
                        .forEach(signature -> violation(events, type, "shows it in " + signature.name())));
    }

    private static ArchRule packagesAreNullMarked(String root) {
        return classes()
                .that()
                .resideInAPackage(root + "..")
                .should(condition("lie in a @NullMarked package", (type, events) -> {
                    if (!type.getPackage().isAnnotatedWith(NullMarked.class)) {
                        violation(events, type, "lies in " + type.getPackageName() + " without @NullMarked");
                    }
                }))
                .because("the compiler then tells where a null could arrive");
    }

    private static ArchRule publicNamesAreUnique(String root) {
        return classes()
                .that()
                .resideInAnyPackage(root + ".model..", root + ".calc..")
                .and()
                .resideOutsideOfPackage("..internal..")
                .and()
                .arePublic()
                .and()
                .areTopLevelClasses()
                .should(haveTheirOwnSimpleName())
                .because("a script sees them side by side");
    }

    private static ArchCondition<JavaClass> haveTheirOwnSimpleName() {
        return new ArchCondition<>("have a simple name of their own") {
            private Map<String, List<String>> bySimpleName = Map.of();

            @Override
            public void init(Collection<JavaClass> all) {
                bySimpleName = all.stream()
                        .collect(Collectors.groupingBy(
                                JavaClass::getSimpleName, Collectors.mapping(JavaClass::getName, Collectors.toList())));
            }

            @Override
            public void check(JavaClass type, ConditionEvents events) {
                List<String> namesakes = bySimpleName.getOrDefault(type.getSimpleName(), List.of());
                if (namesakes.size() > 1) {
                    violation(events, type, "is one of " + namesakes);
                }
            }
        };
    }
}
