package leat.calc.takeoff;

import java.util.List;
import leat.calc.Progress;
import leat.model.finding.Status;
import leat.model.plan.Site;

/** The calculation of all that has to be bought. Existing pipes and the meter count nothing. */
public final class Takeoff {

    private Takeoff() {}

    public static TakeoffResult run(Site site, TakeoffParameters parameters, Progress progress) {
        progress.at(0, "takeoff");
        Materials materials = new Materials();
        Cuts cuts = new Cuts();
        Goods goods = new Goods(site.catalog(), parameters);
        PipeWalk walk = new PipeWalk(site.yard());
        new PipeGoods(site, parameters, goods, walk, materials, cuts).count();
        new WaterGoods(site, parameters, goods, materials).count();
        new PowerGoods(site, parameters, materials, cuts).count();
        parameters.digging().ifPresent(digging -> new TrenchGoods(site.yard(), digging, materials).count());
        if (progress.stopped()) {
            return new TakeoffResult(Status.STOPPED, materials.lines(), List.of());
        }
        List<CutList> lists = cuts.cut(parameters.searchSteps(), materials);
        return new TakeoffResult(Status.COMPLETE, materials.lines(), lists);
    }
}
