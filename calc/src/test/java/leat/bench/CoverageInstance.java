package leat.bench;

import tools.jackson.databind.JsonNode;

/**
 * A lawn with heads. JSON: the corners of the lawn, the heads with x, y, r, start, sweep, flow_lph. Metres, litres an hour;
 * angles in degrees counter-clockwise from east.
 * <p>
 * Question: what falls on each square cell of the lawn (judged at its centre, from the origin) and how evenly. A head gives
 * i0 (1 − d/r) within its sector, i0 = 6 q / (sweep r²) in mm/h.
 */
record CoverageInstance(
        double[] lawnM,
        double[] xM,
        double[] yM,
        double[] radiusM,
        double[] startDeg,
        double[] sweepDeg,
        double[] flowLPerH,
        double cellM,
        int columns,
        int rows) {

    static CoverageInstance read(JsonNode json, double cellM) {
        JsonNode corners = json.get("lawn");
        double[] lawnM = new double[2 * corners.size()];
        double eastM = 0;
        double northM = 0;
        for (int i = 0; i < corners.size(); i++) {
            lawnM[2 * i] = corners.get(i).get(0).doubleValue();
            lawnM[2 * i + 1] = corners.get(i).get(1).doubleValue();
            eastM = Math.max(eastM, lawnM[2 * i]);
            northM = Math.max(northM, lawnM[2 * i + 1]);
        }
        return new CoverageInstance(
                lawnM,
                ofHeads(json, "x"),
                ofHeads(json, "y"),
                ofHeads(json, "r"),
                ofHeads(json, "start"),
                ofHeads(json, "sweep"),
                ofHeads(json, "flow_lph"),
                cellM,
                (int) Math.round(eastM / cellM),
                (int) Math.round(northM / cellM));
    }

    private static double[] ofHeads(JsonNode json, String name) {
        JsonNode heads = json.get("heads");
        double[] values = new double[heads.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = heads.get(i).has(name) ? heads.get(i).get(name).doubleValue() : 0;
        }
        return values;
    }

    int heads() {
        return xM.length;
    }

    double centreM(int index) {
        return (index + 0.5) * cellM;
    }

    /** Whether a point is in the lawn, by crossings to the east of it. */
    boolean onLawn(double x, double y) {
        boolean inside = false;
        int corners = lawnM.length / 2;
        for (int i = 0, before = corners - 1; i < corners; before = i++) {
            double y0 = lawnM[2 * before + 1];
            double y1 = lawnM[2 * i + 1];
            if (y0 > y != y1 > y) {
                double crossing = lawnM[2 * i] + (lawnM[2 * before] - lawnM[2 * i]) * (y - y1) / (y0 - y1);
                inside ^= x < crossing;
            }
        }
        return inside;
    }

    static Answer answer(int cells, double meanMmPerH, double christiansen, double lowQuarter, double shareByTwo) {
        return new Answer()
                .figure("cells", cells, 0, 0)
                .figure("mean_mm_h", meanMmPerH, 1e-6, 0)
                .figure("CU", christiansen, 1e-6, 0)
                .figure("DUlq", lowQuarter, 1e-6, 0)
                .figure("share_2plus", shareByTwo, 1e-6, 0);
    }
}
