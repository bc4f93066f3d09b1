package leat.script;

import java.lang.reflect.GenericArrayType;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Questions about Java types that the conversion between script and host asks. */
final class Types {

    private Types() {}

    /** The class behind a type; a type variable or wildcard stands for its bound. */
    static Class<?> raw(Type type) {
        if (type instanceof Class<?> plain) {
            return plain;
        }
        if (type instanceof ParameterizedType generic) {
            return raw(generic.getRawType());
        }
        if (type instanceof TypeVariable<?> variable) {
            return raw(variable.getBounds()[0]);
        }
        if (type instanceof WildcardType wildcard) {
            return raw(wildcard.getUpperBounds()[0]);
        }
        if (type instanceof GenericArrayType array) {
            return raw(array.getGenericComponentType()).arrayType();
        }
        throw new AssertionError(type);
    }

    /** Type argument number {@code index}, such as Head of List&lt;Head&gt;; Object when none is stated. */
    static Type argument(Type type, int index) {
        return type instanceof ParameterizedType generic ? generic.getActualTypeArguments()[index] : Object.class;
    }

    /** What a type variable of an interface stands for where the interface is used with arguments. */
    static Type resolve(Type type, Type context) {
        if (type instanceof TypeVariable<?> variable && context instanceof ParameterizedType) {
            TypeVariable<?>[] declared = raw(context).getTypeParameters();
            int index = Arrays.asList(declared).indexOf(variable);
            return index < 0 ? type : argument(context, index);
        }
        return type;
    }

    /** The constant that a text names; case does not count, and a space or hyphen stands for an underscore. */
    static Optional<Object> constant(Class<?> enumType, String text) {
        return Arrays.<Object>stream(enumType.getEnumConstants())
                .filter(constant -> plain(((Enum<?>) constant).name()).equals(plain(text)))
                .findFirst();
    }

    private static String plain(String text) {
        return text.strip().toUpperCase(Locale.ROOT).replaceAll("[ _-]+", "_");
    }

    /** True for a record that is nothing but a name, such as an id. */
    static boolean isName(Class<?> type) {
        return type.isRecord()
                && Modifier.isPublic(type.getModifiers())
                && type.getRecordComponents().length == 1
                && type.getRecordComponents()[0].getType() == String.class;
    }

    /** The record of a name, by its constructor; throws what the constructor throws. */
    static Object named(Class<?> type, String name) {
        try {
            return type.getConstructor(String.class).newInstance(name);
        } catch (InvocationTargetException refused) {
            throw unchecked(refused);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("a record of a name without public constructor: " + type, impossible);
        }
    }

    /** The SI figure of a record that is nothing but one number; nothing for all other values. */
    static OptionalDouble figure(Object host) {
        RecordComponent[] components = host.getClass().getRecordComponents();
        boolean readable =
                components != null && Modifier.isPublic(host.getClass().getModifiers());
        if (!readable || components.length != 1 || !components[0].getType().isPrimitive()) {
            return OptionalDouble.empty();
        }
        return read(components[0].getAccessor(), host) instanceof Number number
                ? OptionalDouble.of(number.doubleValue())
                : OptionalDouble.empty();
    }

    /** False for a quantity or another record of one number: what can be done with it goes without saying. */
    static boolean figureless(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        return components == null
                || components.length != 1
                || !components[0].getType().isPrimitive();
    }

    /** The name in a record that is nothing but a name. */
    static String nameIn(Object host) {
        return String.valueOf(read(host.getClass().getRecordComponents()[0].getAccessor(), host));
    }

    private static Object read(Method accessor, Object host) {
        try {
            return accessor.invoke(host);
        } catch (InvocationTargetException thrown) {
            throw unchecked(thrown);
        } catch (IllegalAccessException impossible) {
            throw new IllegalStateException("a record that is not public: " + host.getClass(), impossible);
        }
    }

    /** What a method called by reflection threw, ready to be thrown again as it was. */
    static RuntimeException unchecked(InvocationTargetException thrown) {
        Throwable cause = thrown.getCause();
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof RuntimeException plain ? plain : new IllegalStateException(cause);
    }

    static boolean isAbstract(Method method) {
        return Modifier.isAbstract(method.getModifiers());
    }
}
