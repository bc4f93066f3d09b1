package leat.calc.digging;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.calc.digging.internal.Earthwork;
import leat.calc.digging.internal.Volumes;
import leat.model.plan.Site;
import leat.model.quantity.Area;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Volume;
import leat.model.site.SurfaceKind;
import leat.model.trench.TrenchSegment;

/** The figures of one trench, as the kernels want them; a figure and its explanation come from here both. */
final class Dug {

    private final TrenchSegment trench;
    private final DiggingParameters parameters;
    private final List<Laid> things;
    private final GroundWalk walk;
    final Spacing spacing;
    final Tool tool;
    final Arrangement arrangement;
    final double lengthM;
    final double depthM;
    final double widthM;
    final Ratio sideSlope;

    Dug(TrenchSegment trench, List<Laid> things, Site site, DiggingParameters parameters) {
        this.trench = trench;
        this.parameters = parameters;
        this.things = things;
        walk = GroundWalk.along(trench.route(), site.yard().terrain());
        spacing = Spacing.of(site.rules());
        lengthM = trench.route().lengthM();
        depthM = trench.depth().metres();
        tool = Tool.of(trench.byHand(), depthM, site.rules());
        arrangement = Arrangement.of(things, depthM, spacing);
        boolean isDeep =
                depthM >= site.rules().get("digging.depth.support").limit().si();
        sideSlope = parameters.sideSlope().orElse(isDeep ? DigLaw.SLOPE_TYPE_C : Ratio.ZERO);
        widthM = Math.max(tool.widthM(), arrangement.widthM());
    }

    double bankM3() {
        return Volumes.trenchM3(lengthM, widthM, depthM, sideSlope.value());
    }

    Ratio swell() {
        return parameters.swell().orElse(walk.earth().swell());
    }

    Earth earth() {
        return walk.earth();
    }

    double slopingM() {
        return walk.slopingM();
    }

    double looseM3() {
        return Earthwork.looseM3(bankM3(), swell().value());
    }

    double beddingM3() {
        return arrangement.beddingM3(lengthM, widthM);
    }

    double thingsM3() {
        return arrangement.thingsM3(lengthM);
    }

    double backfillM3() {
        return Math.max(0, bankM3() - beddingM3() - thingsM3());
    }

    /** Loose earth that is over when the trench is filled again. */
    double leftOverM3() {
        double neededM3 = Earthwork.bankM3(backfillM3(), parameters.tamped().value());
        return Math.max(0, looseM3() - Earthwork.looseM3(neededM3, swell().value()));
    }

    /** Volume of trenches of their own for all that lies in this one. */
    double separateM3(Site site) {
        double sumM3 = 0;
        for (Laid one : things) {
            double ownDepthM = Math.min(depthM, one.reachM() + spacing.bedM());
            Tool own = Tool.of(trench.byHand(), ownDepthM, site.rules());
            double ownWidthM = Math.max(own.widthM(), one.outsideM() + spacing.roomM());
            sumM3 += Volumes.trenchM3(lengthM, ownWidthM, ownDepthM, sideSlope.value());
        }
        return sumM3;
    }

    List<Laid> things() {
        return things;
    }

    int thingsCount() {
        return things.size();
    }

    /** As wide as the trench is at the top. */
    private SortedMap<SurfaceKind, Area> cut() {
        double topM = widthM + 2 * sideSlope.value() * depthM;
        SortedMap<SurfaceKind, Area> cut = new TreeMap<>();
        walk.lengthM().forEach((kind, overM) -> cut.put(kind, new Area(overM * topM)));
        return cut;
    }

    TrenchDig figures() {
        return new TrenchDig(
                trench.id(),
                trench.phase(),
                trench.byHand(),
                new Length(lengthM),
                new Length(slopingM()),
                trench.depth(),
                new Length(widthM),
                arrangement.depths(),
                earth(),
                new Volume(bankM3()),
                new Volume(looseM3()),
                new Volume(beddingM3()),
                new Volume(backfillM3()),
                cut());
    }
}
