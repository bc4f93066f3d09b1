package leat.calc.takeoff;

import java.util.ArrayList;
import java.util.List;
import leat.model.fault.InvalidValueException;
import leat.model.fault.Nearest;
import leat.model.fault.Require;
import leat.model.finding.Citation;
import leat.model.finding.Ledger;
import leat.model.finding.Standing;
import leat.model.finding.Status;
import leat.model.finding.Step;
import leat.model.finding.Subject;
import leat.model.geometry.Point;
import leat.model.quantity.Quantity;

/**
 * All materials and how to cut them.
 *
 * @param lines by phase, then kind, then key
 */
public record TakeoffResult(Status status, List<MaterialLine> lines, List<CutList> cuts) {

    private static final Citation COUNTED = new Citation("counted on the plan", Standing.RECOMPUTED);

    public TakeoffResult {
        Require.present("takeoff", "status", status);
        lines = Require.entries("takeoff", "lines", lines);
        cuts = Require.entries("takeoff", "cuts", cuts);
    }

    /**
     * Where a material goes, place by place; the last step has the sum.
     *
     * @param material a key or its first words, such as {@code tee 1 in}; all lines that begin so are added up
     * @throws InvalidValueException if no line is called so, or if some are counted and others measured
     */
    public Ledger why(String material) {
        List<MaterialLine> found =
                lines.stream().filter(line -> line.isCalled(material)).toList();
        if (found.isEmpty()) {
            List<String> keys = lines.stream().map(MaterialLine::key).distinct().toList();
            throw new InvalidValueException(
                    "takeoff",
                    "material",
                    "'" + material + "'",
                    "a key of its lines or the first words of one" + Nearest.hint(material, keys));
        }
        requireOneDimension(material, found);
        List<Step> steps = new ArrayList<>();
        double si = 0;
        for (MaterialLine line : found) {
            line.uses().forEach(use -> steps.add(step(line, use)));
            si += line.quantity().si();
        }
        Quantity sum = found.get(0).quantity().dimension().of(si);
        steps.add(new Step(material + " in all", "sum", List.of(), sum, COUNTED));
        return new Ledger(Subject.yard(), "materials, " + material, steps);
    }

    private static void requireOneDimension(String material, List<MaterialLine> found) {
        long dimensions = found.stream()
                .map(line -> line.quantity().dimension())
                .distinct()
                .count();
        if (dimensions > 1) {
            throw new InvalidValueException(
                    "takeoff",
                    "material",
                    "'" + material + "', which fits " + found.get(0).key() + " and "
                            + found.get(found.size() - 1).key(),
                    "the words of materials that are all counted or all measured");
        }
    }

    private static Step step(MaterialLine line, MaterialUse use) {
        List<Step.Input> inputs = List.of();
        String where = "";
        if (use.subject() instanceof Subject.Place place) {
            Point at = place.point();
            inputs = List.of(new Step.Input("east", at.east()), new Step.Input("north", at.north()));
        } else if (use.subject() instanceof Subject.Thing thing) {
            where = thing.id().kind() + " " + thing.id().name() + ": ";
        }
        return new Step(line.key() + ", " + where + use.why(), "counted", inputs, use.quantity(), COUNTED);
    }
}
