package leat.architecture;

import java.lang.reflect.Executable;
import java.lang.reflect.Member;
import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Names of numbers that end in a unit of the SI, or say that they have none. A formula's coefficient and exponent may be
 * k and n in the method that states it.
 */
final class UnitNames {

    private static final String UNIT = "(M|Mm|M2|M3|Pa|Kpa|C|Mj|H|Rad|Deg|S|A|V|W|Ohm|Kg|K)";
    private static final Pattern WITH_UNIT = Pattern.compile(".*[A-Za-z0-9]" + UNIT + "(Per" + UNIT + ")*[0-9]?");
    private static final Pattern PURE =
            Pattern.compile("k|n|metres|meters|relative[A-Z].*|values|bound|lowQuarter|price|hazenWilliamsC"
                    + "|(?i:.*(ratio|factor|fraction|share|count|weight|exponent|coefficient|slope|cost)s?[0-9]?)");
    private static final Pattern COORDINATE = Pattern.compile("([xy]|[a-z]+[XY])s?[0-9]?");

    private UnitNames() {}

    /** The parameters of a method or constructor that are doubles and do not say of what. */
    static Stream<String> missing(Member codeUnit) {
        return Arrays.stream(((Executable) codeUnit).getParameters())
                .filter(parameter -> isNumber(parameter.getType()) && !says(parameter.getName()))
                .map(parameter -> codeUnit.getDeclaringClass().getSimpleName() + "." + codeUnit.getName() + "("
                        + parameter.getName() + ")");
    }

    private static boolean isNumber(Class<?> type) {
        return type.isArray() ? isNumber(type.getComponentType()) : type == double.class || type == float.class;
    }

    private static boolean says(String name) {
        return Stream.of(WITH_UNIT, PURE, COORDINATE)
                .anyMatch(pattern -> pattern.matcher(name).matches());
    }
}
