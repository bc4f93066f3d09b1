package leat.script;

import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;

/** The values that the user states for a script's parameters, and which of them the script asked for. */
final class Settings {

    private final SortedMap<String, String> stated;
    private final Set<String> asked = new TreeSet<>();

    Settings(SortedMap<String, String> stated) {
        this.stated = stated;
    }

    /** The stated value as the same kind of thing as {@code otherwise}; that itself when nothing is stated. */
    Object get(String name, Object otherwise) {
        asked.add(name);
        String text = stated.get(name);
        if (text == null) {
            return otherwise;
        }
        if (otherwise instanceof String) {
            return text;
        }
        if (otherwise instanceof Integer) {
            return whole(name, text);
        }
        if (otherwise instanceof Number) {
            return number(name, text);
        }
        if (otherwise instanceof Boolean) {
            return truth(name, text);
        }
        throw new ScriptMistake(
                "param(\"" + name + "\"): the default must be a text, a number, true or false", "param");
    }

    /** Java alone tells whole numbers from others. */
    private static int whole(String name, String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException noNumber) {
            throw new ScriptMistake("--set " + name + "=" + text + ": this parameter is a whole number", "param");
        }
    }

    private static double number(String name, String text) {
        try {
            double number = Double.parseDouble(text);
            if (Double.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException noNumber) {
            // said below, together with a number that is not finite
        }
        throw new ScriptMistake("--set " + name + "=" + text + ": this parameter is a number", "param");
    }

    private static boolean truth(String name, String text) {
        return switch (text) {
            case "true" -> true;
            case "false" -> false;
            default ->
                throw new ScriptMistake("--set " + name + "=" + text + ": this parameter is true or false", "param");
        };
    }

    /** @throws ScriptMistake if a value was stated that the script never asked for; likely it is misspelt */
    void refuseUnasked() {
        for (String name : stated.keySet()) {
            if (!asked.contains(name)) {
                throw new ScriptMistake(
                        "--set " + name + ": the script has no such parameter" + Hint.nearestOrAll(name, asked));
            }
        }
    }
}
