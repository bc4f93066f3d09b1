package leat.launcher;

/** The program that the launcher finds in place of Leat: prints its arguments, ends with the first as exit code if it is a number. */
final class Echo {

    private Echo() {}

    public static void main(String[] arguments) {
        System.out.println(String.join("|", arguments) + System.getProperty("extra", ""));
        System.exit(arguments[0].matches("[0-9]+") ? Integer.parseInt(arguments[0]) : 0);
    }
}
