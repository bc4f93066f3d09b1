package leat.calc.hydraulics;

import leat.model.finding.Citation;
import leat.model.id.Id;
import org.jspecify.annotations.Nullable;

/**
 * One way of losing pressure between two places of a water path.
 *
 * @param parent     place upstream; the source's own outlet curve is the link that feeds place 1
 * @param kind       what it is
 * @param of         pipe, device or head that it belongs to
 * @param elevationM of the place downstream
 * @param lengthM    of pipe; 0 for all else
 * @param boreM      of the pipe that it is part of; 0 for devices
 * @param friction   coefficient of friction
 * @param minor      coefficient of fittings
 * @param thresholdM of a device
 * @param deviceK    coefficient of a device, in m per (m³/s)^n
 * @param deviceN    exponent of a device
 * @param citation   where its law comes from
 */
record Link(
        int parent,
        Kind kind,
        @Nullable Id of,
        double elevationM,
        double lengthM,
        double boreM,
        double friction,
        double minor,
        double thresholdM,
        double deviceK,
        double deviceN,
        Citation citation) {

    enum Kind {
        SOURCE,
        METER,
        BACKFLOW,
        FITTED,
        PIPE,
        VALVE,
        HEAD
    }

    static Link pipe(
            int parent,
            Id of,
            double elevationM,
            double lengthM,
            double boreM,
            double friction,
            double minor,
            Citation c) {
        return new Link(parent, Kind.PIPE, of, elevationM, lengthM, boreM, friction, minor, 0, 0, 2, c);
    }

    static Link device(
            int parent, Kind kind, Id of, double elevationM, double thresholdM, double k, double n, Citation citation) {
        return new Link(parent, kind, of, elevationM, 0, 0, 0, 0, thresholdM, k, n, citation);
    }

    boolean isDevice() {
        return thresholdM > 0 || deviceK > 0;
    }
}
