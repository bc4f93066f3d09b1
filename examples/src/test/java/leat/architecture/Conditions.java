package leat.architecture;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the library of rules does not offer ready made. */
final class Conditions {

    private static final String INTERNAL = ".internal";

    private Conditions() {}

    static ArchCondition<JavaClass> useInternalOfTheirOwnOnly() {
        return aboutDependencies("use internal classes of their own service only", (from, to) -> {
            int internal = (to.getPackageName() + ".").indexOf(INTERNAL + ".");
            return internal < 0
                    || (from.getPackageName() + ".")
                            .startsWith(to.getPackageName().substring(0, internal) + ".");
        });
    }

    /** For use after {@code noClasses().should}: an event that conforms is a violation there. */
    static ArchCondition<JavaClass> runAnotherService() {
        return condition(
                "run another service",
                (from, events) -> from.getMethodCallsFromSelf().stream()
                        .filter(call -> call.getName().equals("run")
                                && isService(call.getTargetOwner())
                                && !call.getTargetOwner().equals(from))
                        .forEach(call -> events.add(SimpleConditionEvent.satisfied(from, call.getDescription()))));
    }

    static boolean isService(JavaClass candidate) {
        return candidate.getMethods().stream()
                .anyMatch(method -> method.getName().equals("run")
                        && method.getModifiers().contains(JavaModifier.STATIC)
                        && method.getModifiers().contains(JavaModifier.PUBLIC));
    }

    /** What a caller from outside sees of a class: public and protected methods, constructors and fields. */
    static Stream<Signature> publicSignatures(JavaClass of) {
        Stream<Signature> fields = of.getFields().stream()
                .filter(field -> isVisible(field.getModifiers()))
                .map(field -> new Signature(field.getFullName(), field.getType().getAllInvolvedRawTypes()));
        Stream<Signature> codeUnits = of.getCodeUnits().stream()
                .filter(unit -> isVisible(unit.getModifiers())
                        && !unit.getModifiers().contains(JavaModifier.SYNTHETIC)
                        && !unit.getName().equals("<clinit>"))
                .map(unit -> new Signature(unit.getFullName(), typesOf(unit)));
        return Stream.concat(fields, codeUnits);
    }

    /**
     * @param name  of the member, in full
     * @param types all that it mentions, also as type arguments
     */
    record Signature(String name, Set<JavaClass> types) {

        Set<String> typeNames() {
            return types.stream()
                    .map(type -> type.getBaseComponentType().getName())
                    .collect(Collectors.toSet());
        }
    }

    private static Set<JavaClass> typesOf(JavaCodeUnit unit) {
        return Stream.concat(
                        Stream.concat(unit.getParameterTypes().stream(), Stream.of(unit.getReturnType()))
                                .flatMap(type -> type.getAllInvolvedRawTypes().stream()),
                        unit.getTypeParameters().stream().flatMap(type -> type.getAllInvolvedRawTypes().stream()))
                .collect(Collectors.toSet());
    }

    private static boolean isVisible(Set<JavaModifier> modifiers) {
        return modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED);
    }

    static ArchCondition<JavaClass> condition(String text, BiConsumer<JavaClass, ConditionEvents> check) {
        return new ArchCondition<>(text) {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                check.accept(item, events);
            }
        };
    }

    static void violation(ConditionEvents events, HasName what, String message) {
        events.add(SimpleConditionEvent.violated(what, what.getName() + " " + message));
    }

    private static ArchCondition<JavaClass> aboutDependencies(String text, BiPredicate<JavaClass, JavaClass> allowed) {
        return condition(text, (from, events) -> {
            for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
                if (!allowed.test(from, dependency.getTargetClass())) {
                    events.add(SimpleConditionEvent.violated(from, dependency.getDescription()));
                }
            }
        });
    }
}
