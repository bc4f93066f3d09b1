package leat.calc.assess;

import java.util.List;
import leat.calc.placement.PlacementParameters;
import leat.calc.sizing.SizingParameters;
import leat.calc.trenching.TrenchingParameters;
import leat.calc.zoning.ZoningParameters;
import leat.model.fault.Require;
import leat.model.quantity.Count;
import leat.model.quantity.Flow;

/** What the designer may choose, stage by stage. */
public record PlannerParameters(
        PlacementParameters placement,
        ZoningParameters zoning,
        TrenchingParameters trenching,
        SizingParameters sizing) {

    public PlannerParameters {
        Require.present("planner", "placement", placement);
        Require.present("planner", "zoning", zoning);
        Require.present("planner", "trenching", trenching);
        Require.present("planner", "sizing", sizing);
    }

    public static PlannerParameters defaults() {
        return new PlannerParameters(
                PlacementParameters.defaults(),
                ZoningParameters.defaults(),
                TrenchingParameters.defaults(),
                SizingParameters.defaults());
    }

    public PlannerParameters withPlacement(PlacementParameters one) {
        return new PlannerParameters(one, zoning, trenching, sizing);
    }

    public PlannerParameters withZoning(ZoningParameters one) {
        return new PlannerParameters(placement, one, trenching, sizing);
    }

    public PlannerParameters withTrenching(TrenchingParameters one) {
        return new PlannerParameters(placement, zoning, one, sizing);
    }

    public PlannerParameters withSizing(SizingParameters one) {
        return new PlannerParameters(placement, zoning, trenching, one);
    }

    /** The choices that most yards make, without naming their stage: families of heads, by catalogue key. */
    public PlannerParameters withHeads(List<String> families) {
        return withPlacement(placement.withFamilies(families));
    }

    /** No zone has more heads than that. */
    public PlannerParameters withMostHeads(int heads) {
        return withZoning(zoning.withMostHeads(Count.of(heads)));
    }

    /** No zone draws more than that; without it the supply sets the limit. */
    public PlannerParameters withMostFlow(Flow flow) {
        return withZoning(zoning.withMostFlow(flow));
    }
}
