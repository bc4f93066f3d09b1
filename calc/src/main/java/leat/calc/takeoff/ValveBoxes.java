package leat.calc.takeoff;

import java.util.ArrayList;
import java.util.List;

/** Boxes for the valves of a manifold: as few as can be, then as small as can be. Common practice, no source. */
enum ValveBoxes {
    ROUND_6(1, "valve box round 6 in", "valve box, round, 150 mm (6 in), one valve"),
    ROUND_10(2, "valve box round 10 in", "valve box, round, 250 mm (10 in), two valves"),
    RECTANGULAR_12(4, "valve box rectangular 12 in", "valve box, rectangular, 300 x 430 mm, four valves"),
    RECTANGULAR_15(6, "valve box rectangular 15 in", "valve box, rectangular, 380 x 530 mm, six valves");

    private final int most;
    private final String key;
    private final String text;

    ValveBoxes(int most, String key, String text) {
        this.most = most;
        this.key = key;
        this.text = text;
    }

    String key() {
        return key;
    }

    String text() {
        return text;
    }

    /** The largest as often as it is filled, and the smallest that takes the rest. */
    static List<ValveBoxes> holding(int valves) {
        List<ValveBoxes> boxes = new ArrayList<>();
        ValveBoxes largest = values()[values().length - 1];
        int left = valves;
        while (left > largest.most) {
            boxes.add(largest);
            left -= largest.most;
        }
        for (ValveBoxes box : values()) {
            if (left > 0 && left <= box.most) {
                boxes.add(box);
                left = 0;
            }
        }
        return boxes;
    }
}
