package leat.draw;

/** Numbers as text: at most so many decimals, a point, no exponent, no trailing zeros, no minus zero, in any locale. */
final class Numbers {

    private static final double MOST = 1e9;

    private Numbers() {}

    /** Coordinates and lengths: to a thousandth of a millimetre, finer than any plotter. */
    static String mm(double value) {
        return decimal(value, 3);
    }

    static String decimal(double value, int decimals) {
        if (!(Math.abs(value) < MOST)) {
            throw new IllegalArgumentException("drawing: a coordinate is " + value + "; it must be within " + MOST);
        }
        long scale = 1;
        for (int i = 0; i < decimals; i++) {
            scale *= 10;
        }
        long whole = Math.round(Math.abs(value) * scale);
        StringBuilder text = new StringBuilder(12);
        if (value < 0 && whole != 0) {
            text.append('-');
        }
        text.append(whole / scale);
        long rest = whole % scale;
        if (rest != 0) {
            text.append('.');
            for (long digit = scale / 10; rest != 0; digit /= 10) {
                text.append((char) ('0' + rest / digit));
                rest %= digit;
            }
        }
        return text.toString();
    }
}
