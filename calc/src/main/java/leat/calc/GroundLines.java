package leat.calc;

import java.util.ArrayList;
import java.util.List;
import leat.model.plan.Yard;
import leat.model.power.Conduit;
import leat.model.quantity.Length;
import leat.model.water.PipeRun;

/** What lies in the ground already, so that nobody digs a hole on top of it. */
public final class GroundLines {

    private GroundLines() {}

    /** Services, conduits that are there, and pipes of the main that are there. Laterals are where their heads stand. */
    public static List<GroundLine> of(Yard yard) {
        List<GroundLine> lines = new ArrayList<>();
        yard.terrain().services().forEach(one -> lines.add(new GroundLine(one.id(), one.route(), one.doubt())));
        yard.power().conduits().stream()
                .filter(Conduit::existing)
                .forEach(one -> lines.add(new GroundLine(one.id(), one.route(), Length.ZERO)));
        yard.water().main().runs().stream()
                .filter(PipeRun::existing)
                .forEach(one -> lines.add(new GroundLine(one.id(), one.route(), Length.ZERO)));
        return List.copyOf(lines);
    }
}
