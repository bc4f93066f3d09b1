package leat.calc.placement.internal;

import java.util.ArrayList;
import java.util.List;

/** A closed line along which rows end and are joined, in the frame of the rows. Stations run from corner 0 on and around. */
final class EdgeRing {

    private final int number;
    private final double[] uvM;
    private final double[] stationM;

    /** @param uvM u0, v0, u1, v1, …; the first corner is not repeated */
    EdgeRing(int number, double[] uvM) {
        this.number = number;
        this.uvM = uvM;
        int corners = uvM.length / 2;
        stationM = new double[corners + 1];
        for (int i = 0; i < corners; i++) {
            stationM[i + 1] = stationM[i] + Math.hypot(uM(i + 1) - uM(i), vM(i + 1) - vM(i));
        }
    }

    private int corners() {
        return stationM.length - 1;
    }

    private double uM(int corner) {
        return uvM[2 * (corner % corners())];
    }

    private double vM(int corner) {
        return uvM[2 * (corner % corners()) + 1];
    }

    double lengthM() {
        return stationM[corners()];
    }

    /** Adds each place where the line crosses a level, in no order of u. */
    void addCrossings(double levelM, List<RowEnd> ends) {
        for (int i = 0; i < corners(); i++) {
            double fromM = vM(i);
            double toM = vM(i + 1);
            if (fromM <= levelM != toM <= levelM) {
                double share = (levelM - fromM) / (toM - fromM);
                double atM = stationM[i] + share * (stationM[i + 1] - stationM[i]);
                ends.add(new RowEnd(number, atM, uM(i) + share * (uM(i + 1) - uM(i)), levelM));
            }
        }
    }

    /** How far it is from one station to another going forward: 0 or more, less than the length. */
    double forwardM(double fromM, double toM) {
        double wayM = toM - fromM;
        return wayM < 0 ? wayM + lengthM() : wayM;
    }

    /** The place at a station, which may lie before the first or beyond the last. */
    RowEnd at(double anyStationM) {
        double atM = anyStationM - Math.floor(anyStationM / lengthM()) * lengthM();
        int i = 0;
        while (i < corners() - 1 && stationM[i + 1] < atM) {
            i++;
        }
        double sideM = stationM[i + 1] - stationM[i];
        double share = sideM == 0 ? 0 : (atM - stationM[i]) / sideM;
        return new RowEnd(number, atM, uM(i) + share * (uM(i + 1) - uM(i)), vM(i) + share * (vM(i + 1) - vM(i)));
    }

    /** Corners met on a way along the line, in the order of walking, without its ends. A way of less than 0 goes backward. */
    List<RowEnd> cornersOn(double fromM, double wayM) {
        List<RowEnd> met = new ArrayList<>();
        int corners = corners();
        for (int step = 0; step < 2 * corners; step++) {
            int corner = wayM > 0 ? step : 2 * corners - 1 - step;
            double roundM = corner < corners ? 0 : lengthM();
            double cornerM = stationM[corner % corners] + roundM;
            double startM = wayM > 0 ? fromM : fromM + lengthM();
            double passedM = wayM > 0 ? cornerM - startM : startM - cornerM;
            if (passedM > 0 && passedM < Math.abs(wayM)) {
                met.add(new RowEnd(number, stationM[corner % corners], uM(corner), vM(corner)));
            }
        }
        return met;
    }
}
