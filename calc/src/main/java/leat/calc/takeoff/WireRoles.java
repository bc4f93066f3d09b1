package leat.calc.takeoff;

import java.util.ArrayList;
import java.util.List;
import leat.model.power.Circuit;
import leat.model.power.CodeFamily;

/**
 * The colours of a circuit's conductors, by which they are bought and told apart. NFPA 70 reserves white or grey for the
 * grounded conductor and green for the grounding one (200.6, 250.119), the others are custom; IEC 60446 (now 60445) has
 * blue, green-yellow, and brown, black, grey. From memory; the code in force locally decides.
 */
final class WireRoles {

    private WireRoles() {}

    /** Colours of the conductors that carry current, then that of the one for protection. */
    static List<String> colours(Circuit circuit, boolean hasNeutral, CodeFamily code) {
        boolean us = code == CodeFamily.NFPA_70;
        List<String> live = us ? List.of("black", "red", "blue") : List.of("brown", "black", "grey");
        List<String> colours = new ArrayList<>(live.subList(0, circuit.liveWires() - (hasNeutral ? 1 : 0)));
        if (hasNeutral) {
            colours.add(us ? "white" : "blue");
        }
        colours.add(us ? "green" : "green-yellow");
        return List.copyOf(colours);
    }

    /** What a conductor's size is counted in. */
    static String sized(String conductor, CodeFamily code) {
        return code == CodeFamily.NFPA_70 ? conductor + " AWG" : conductor + " mm2";
    }
}
