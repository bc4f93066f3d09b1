package leat.script.toy;

/** Another quantity, to be taken for the wrong one. */
public record Pressure(double pascals) {

    @Override
    public String toString() {
        return Math.round(pascals / 6894.757) + " psi";
    }
}
