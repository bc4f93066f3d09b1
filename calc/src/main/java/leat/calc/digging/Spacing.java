package leat.calc.digging;

import leat.model.catalog.Rules;

/**
 * What must be free in a trench, from the rules.
 *
 * @param roomM   more than the things beside each other, to bed and tamp
 * @param besideM earth between two things beside or above each other
 * @param apartM  between power and anything else
 * @param bedM    below the lowest, where the depth leaves room
 */
record Spacing(double roomM, double besideM, double apartM, double bedM) {

    static Spacing of(Rules rules) {
        return new Spacing(
                rules.get("digging.room").limit().si(),
                rules.get("digging.beside").limit().si(),
                rules.get("digging.apart").limit().si(),
                rules.get("digging.bed").limit().si());
    }

    double between(Laid one, Laid other) {
        return one.isPower() == other.isPower() ? besideM : apartM;
    }
}
