package leat.calc.takeoff;

import java.util.Optional;
import leat.calc.digging.DiggingResult;
import leat.calc.digging.TrenchDig;
import leat.model.catalog.MaterialKind;
import leat.model.finding.Subject;
import leat.model.id.CableId;
import leat.model.id.ConduitId;
import leat.model.id.LaidId;
import leat.model.id.PipeId;
import leat.model.plan.Yard;
import leat.model.power.Cable;
import leat.model.power.PowerCable;
import leat.model.quantity.Length;
import leat.model.quantity.Volume;
import leat.model.trench.TrenchSegment;
import leat.model.water.PipeRun;

/** What goes into the trenches around what is laid, and the digging itself for those who pay for it. */
final class TrenchGoods {

    private final Yard yard;
    private final DiggingResult digging;
    private final Materials materials;

    TrenchGoods(Yard yard, DiggingResult digging, Materials materials) {
        this.yard = yard;
        this.digging = digging;
        this.materials = materials;
    }

    void count() {
        yard.trenches().forEach(trench -> digging.trench(trench.id()).ifPresent(dug -> trench(trench, dug)));
    }

    private void trench(TrenchSegment trench, TrenchDig dug) {
        if (dug.bedding().compareTo(Volume.ZERO) > 0) {
            MaterialUse use = new MaterialUse(Subject.of(trench.id()), "around what lies in it", dug.bedding());
            materials.add(
                    trench.phase(),
                    MaterialKind.BEDDING,
                    "bedding sand",
                    "sand or screened earth, without stones",
                    use);
        }
        if (trench.contents().stream().anyMatch(this::isPower)) {
            tape(trench, dug.onGround(), "warning tape electric", "above conductors");
        }
        if (trench.contents().stream().anyMatch(this::isMain)) {
            tape(trench, dug.onGround(), "warning tape water", "above the main");
        }
        String by = trench.byHand() ? "trench dug by hand" : "trench dug by machine";
        MaterialUse use = new MaterialUse(Subject.of(trench.id()), "its length on the ground", dug.onGround());
        materials.add(trench.phase(), MaterialKind.LABOUR, by, "digging and filling again", use);
    }

    private void tape(TrenchSegment trench, Length length, String key, String why) {
        materials.add(
                trench.phase(), MaterialKind.MARKING, key, key, new MaterialUse(Subject.of(trench.id()), why, length));
    }

    /** A conduit that nothing passes yet is taken for one of power. */
    private boolean isPower(LaidId id) {
        if (id instanceof ConduitId conduit) {
            return yard.power().cablesIn(conduit).stream().allMatch(PowerCable.class::isInstance);
        }
        if (id instanceof CableId cable) {
            Optional<Cable> found = yard.power().cable(cable);
            return found.filter(PowerCable.class::isInstance).isPresent();
        }
        return false;
    }

    private boolean isMain(LaidId id) {
        return id instanceof PipeId
                && yard.water().main().runs().stream().map(PipeRun::id).anyMatch(id::equals);
    }
}
