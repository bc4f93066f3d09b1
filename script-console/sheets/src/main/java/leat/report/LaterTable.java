package leat.report;

import java.util.ArrayList;
import java.util.List;
import leat.model.id.Id;
import leat.model.plan.Yard;
import leat.model.power.Ahead;
import leat.model.site.Phase;

/** Everything of a yard that is built in a later year. */
final class LaterTable {

    private final List<List<Cell>> rows = new ArrayList<>();

    private LaterTable() {}

    static Table of(Yard yard) {
        LaterTable table = new LaterTable();
        yard.terrain().surfaces().forEach(one -> table.add(one.id(), one.phase(), ""));
        yard.water().bibs().forEach(one -> table.add(one.id(), one.phase(), ""));
        yard.water().zones().forEach(one -> table.add(one.id(), one.phase(), ""));
        yard.water().pipes().forEach(one -> table.add(one.id(), one.phase(), ""));
        yard.power().panels().forEach(one -> table.add(one.id(), one.phase(), ""));
        yard.power().circuits().forEach(one -> table.add(one.id(), one.phase(), ""));
        yard.power().loads().forEach(one -> table.add(one.id(), one.phase(), laidNow(one.ahead())));
        yard.power().switches().forEach(one -> table.add(one.id(), one.phase(), ""));
        yard.power().conduits().forEach(one -> table.add(one.id(), one.phase(), ""));
        yard.power().cables().forEach(one -> table.add(one.id(), one.phase(), ""));
        yard.trenches().forEach(one -> table.add(one.id(), one.phase(), ""));
        return new Table(List.of("thing", "kind", "laid for it now"), table.rows);
    }

    private void add(Id id, Phase phase, String laidNow) {
        if (phase == Phase.LATER) {
            rows.add(List.of(Cell.text(id.name()), Cell.text(id.kind()), Cell.text(laidNow)));
        }
    }

    private static String laidNow(Ahead ahead) {
        return switch (ahead) {
            case NOTHING -> "nothing";
            case CONDUIT -> "an empty conduit with a pull string";
            case WIRES -> "conduit and conductors, ends insulated, boxed and tagged";
        };
    }
}
