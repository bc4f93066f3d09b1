package leat.report;

import java.util.List;
import leat.model.id.PipeId;
import leat.model.plan.Yard;
import leat.model.power.CodeFamily;
import leat.model.power.PowerSystem;
import leat.model.trench.TrenchSegment;

/** The sheet from which power and control are built. */
final class PowerPlan implements PlanSheet.Content {

    private final Yard yard;

    PowerPlan(Yard yard) {
        this.yard = yard;
    }

    @Override
    public String title() {
        return "Power plan";
    }

    @Override
    public void paint(Board board) {
        PowerSystem power = yard.power();
        GroundPainter ground = new GroundPainter(board);
        ground.surfaces(yard.terrain().surfaces());
        new HindrancePainter(board).draw(yard.terrain());
        List<TrenchSegment> trenches = yard.trenches().stream()
                .filter(trench -> trench.contents().stream().anyMatch(laid -> !(laid instanceof PipeId)))
                .toList();
        new TrenchPainter(board).draw(trenches);
        new WirePainter(board, power, yard.codeFamily()).draw();
        new PowerPainter(board, power).draw(yard.water().manifolds());
        yard.terrain().survey().ifPresent(ground::lot);
        new FindingPainter(board, yard).draw(FindingPainter::isOfPower);
    }

    @Override
    public List<String> letteredLayers() {
        return List.of("surfaces", "hindrances", "services", "conduits", "cables", "power", "findings");
    }

    @Override
    public List<String> notes() {
        boolean tradeSizes = yard.codeFamily() == CodeFamily.NFPA_70;
        return List.of(
                "A licensed electrician checks and connects all of this, with permit, and before trenches are filled.",
                "Power and control never share a conduit or a box.",
                "In brackets: the circuit. Beside a conduit: its " + (tradeSizes ? "trade size" : "nominal size in mm")
                        + " and its circuits. Conduits of one trench are drawn side by side.");
    }
}
