package leat.calc.assess;

import leat.calc.placement.PlacementParameters;
import leat.calc.sizing.SizingParameters;
import leat.calc.trenching.TrenchingParameters;
import leat.calc.zoning.ZoningParameters;
import leat.model.fault.Require;

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
}
