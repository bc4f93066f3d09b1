package leat.script.toy;

/** The vocabulary of the toy. */
public final class Words {

    public static final Urgency LATER = Urgency.NOTE;

    private Words() {}

    public static HeadPart rotor(String name) {
        return new HeadPart(name, feet(10), Urgency.NOTE);
    }

    public static Garden garden(Head... heads) {
        return new Garden(java.util.List.of(heads));
    }

    public static Length feet(double feet) {
        return new Length(feet * 0.3048);
    }

    public static Pressure psi(double psi) {
        return new Pressure(psi * 6894.757);
    }

    public static String at(Length x, Length y) {
        return "at " + x + ", " + y;
    }

    public static String at(double x, double y) {
        return "at " + x + ", " + y;
    }
}
