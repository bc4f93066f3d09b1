package leat.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import leat.model.plan.Parts;
import leat.model.plan.Yard;
import leat.script.toy.Garden;
import leat.script.toy.internal.Secret;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What scripts can call is closed: nothing on the surface hands out or takes anything that leads elsewhere. */
@Tag("law")
class SurfaceTest {

    private static final Set<String> HARMLESS = Set.of(
            "java.lang.String",
            "java.lang.CharSequence",
            "java.lang.Object",
            "java.lang.Comparable",
            "java.lang.Iterable",
            "java.lang.Double",
            "java.lang.Integer",
            "java.lang.Long",
            "java.lang.Boolean",
            "java.lang.Number",
            "java.util.stream.Stream",
            "java.lang.Record",
            "java.lang.Enum",
            "java.math.BigDecimal",
            // a script sees these as text
            "org.joda.money.BigMoney",
            "org.joda.money.CurrencyUnit",
            "org.joda.money.Money",
            "java.time.DayOfWeek",
            "java.time.Month",
            "java.time.LocalDate");

    private final Surface surface = Surface.ofLeat();

    @Test
    void noMethodGivesOrTakesWhatLeadsOutOfLeat() {
        Set<String> strangers = new TreeSet<>();
        for (Class<?> type : surface.types().values()) {
            surface.members(type).values().forEach(operation -> collect(operation, strangers));
            Surface.statics(type).values().forEach(operation -> collect(operation, strangers));
        }
        assertEquals(Set.of(), strangers);
    }

    private void collect(Operation operation, Set<String> strangers) {
        for (Method method : operation.overloads()) {
            collect(method, method.getGenericReturnType(), strangers);
            for (Type parameter : method.getGenericParameterTypes()) {
                collect(method, parameter, strangers);
            }
        }
    }

    private void collect(Method method, Type type, Set<String> strangers) {
        if (type instanceof ParameterizedType generic) {
            for (Type argument : generic.getActualTypeArguments()) {
                collect(method, argument, strangers);
            }
        }
        if (type instanceof TypeVariable<?> || type instanceof WildcardType) {
            return;
        }
        Class<?> raw = Types.raw(type);
        while (raw.isArray()) {
            raw = raw.getComponentType();
        }
        boolean collection = Collection.class.isAssignableFrom(raw) || Map.class.isAssignableFrom(raw);
        boolean known = raw.isPrimitive()
                || collection
                || HARMLESS.contains(raw.getName())
                || raw.getName().startsWith("java.util.function.")
                || raw.getName().startsWith("java.util.Optional")
                || raw.equals(java.util.Comparator.class)
                || surface.shows(raw);
        if (!known) {
            strangers.add(method + " has to do with " + raw.getName());
        }
    }

    @Test
    void documentsAndInternalsAreNeverShown() {
        for (Class<?> type : surface.types().values()) {
            String place = type.getPackageName();
            assertTrue(place.startsWith("leat.model.") || place.startsWith("leat.calc"), type.getName());
            assertFalse((place + ".").contains(".internal.") || place.contains("document"), type.getName());
        }
        assertFalse(Surface.of("leat.script.toy").shows(Secret.class));
    }

    @Test
    void theMethodsOfEveryObjectAreNotShown() {
        for (Class<?> type : surface.types().values()) {
            for (String name : List.of("getClass", "wait", "notify", "notifyAll", "hashCode", "equals", "toString")) {
                assertFalse(surface.members(type).containsKey(name), type + "." + name);
            }
        }
    }

    @Test
    void hiddenMethodsAreNotShown() {
        assertFalse(Surface.of("leat.script.toy").members(Garden.class).containsKey("hidden"));
        assertFalse(Surface.statics(Garden.class).containsKey("hidden"));
    }

    @Test
    void theListingFindsTypesOfEachPackage() {
        assertEquals(Yard.class, surface.types().get("Yard"));
        assertEquals(Parts.class, surface.types().get("Parts"));
        assertTrue(surface.types().containsKey("Pressure"));
        assertTrue(surface.types().containsKey("Progress"));
    }

    /** The language's own names stay what they are. */
    @Test
    void noWordHidesABuiltInOfTheLanguage() {
        List<String> builtIn = List.of(
                "Object",
                "Array",
                "Map",
                "Set",
                "Date",
                "Math",
                "Number",
                "String",
                "Boolean",
                "Symbol",
                "Error",
                "Promise",
                "Proxy",
                "Reflect",
                "RegExp",
                "JSON",
                "Function",
                "Infinity",
                "NaN",
                "undefined",
                "eval",
                "isNaN",
                "parseInt",
                "parseFloat",
                "Iterator",
                "Intl",
                "BigInt",
                "WeakMap",
                "WeakSet");
        for (String name : builtIn) {
            assertFalse(surface.types().containsKey(name), name);
            assertFalse(Surface.statics(Parts.class).containsKey(name), name);
        }
    }

    /** Java scripts import both, and a name that stands for two things is refused. */
    @Test
    void noTypeBearsTheNameOfOneThatScriptsInJavaImport() {
        for (String name : surface.types().keySet()) {
            for (String imported : List.of("java.lang.", "java.util.", "java.util.stream.")) {
                assertThrows(ClassNotFoundException.class, () -> Class.forName(imported + name), imported + name);
            }
        }
    }

    @Test
    void noFunctionOfTheSessionHidesAWordOfTheVocabulary() {
        for (String name : Surface.own(SessionFunctions.class).keySet()) {
            assertFalse(Surface.statics(Parts.class).containsKey(name), name);
        }
    }
}
