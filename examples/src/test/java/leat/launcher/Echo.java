package leat.launcher;

/** The program that the launcher finds in place of Leat: prints its arguments, ends with the first as exit code. */
final class Echo {

    private Echo() {}

    public static void main(String[] arguments) {
        System.out.println(String.join("|", arguments) + System.getProperty("extra", ""));
        System.exit(arguments[0].startsWith("--") ? 0 : Integer.parseInt(arguments[0]));
    }
}
