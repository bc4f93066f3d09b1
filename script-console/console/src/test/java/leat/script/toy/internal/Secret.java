package leat.script.toy.internal;

/** Not for scripts. */
public final class Secret {

    public static String word() {
        return "secret";
    }
}
