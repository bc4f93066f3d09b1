package leat.calc.assess;

import java.util.List;
import leat.calc.placement.PlacementParameters;
import leat.calc.sizing.SizingParameters;
import leat.calc.trenching.TrenchingParameters;
import leat.calc.wiring.WiringParameters;
import leat.calc.zoning.ZoningParameters;
import leat.model.fault.Require;
import leat.model.quantity.Count;
import leat.model.quantity.Flow;
import leat.model.quantity.Length;

/** What the designer may choose, stage by stage. */
public record PlannerParameters(
        PlacementParameters placement,
        ZoningParameters zoning,
        TrenchingParameters trenching,
        SizingParameters sizing,
        WiringParameters wiring) {

    public PlannerParameters {
        Require.present("planner", "placement", placement);
        Require.present("planner", "zoning", zoning);
        Require.present("planner", "trenching", trenching);
        Require.present("planner", "sizing", sizing);
        Require.present("planner", "wiring", wiring);
    }

    public static PlannerParameters defaults() {
        return new PlannerParameters(
                PlacementParameters.defaults(),
                ZoningParameters.defaults(),
                TrenchingParameters.defaults(),
                SizingParameters.defaults(),
                WiringParameters.defaults());
    }

    public PlannerParameters withPlacement(PlacementParameters one) {
        return new PlannerParameters(one, zoning, trenching, sizing, wiring);
    }

    public PlannerParameters withZoning(ZoningParameters one) {
        return new PlannerParameters(placement, one, trenching, sizing, wiring);
    }

    /** What it chooses about trenches holds for wires too. */
    public PlannerParameters withTrenching(TrenchingParameters one) {
        return new PlannerParameters(placement, zoning, one, sizing, wiring.withTrenches(one.choices()));
    }

    public PlannerParameters withSizing(SizingParameters one) {
        return new PlannerParameters(placement, zoning, trenching, one, wiring);
    }

    public PlannerParameters withWiring(WiringParameters one) {
        return new PlannerParameters(placement, zoning, trenching, sizing, one);
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

    /** The family of the drip lines that are laid in beds watered by drip, by catalogue key. */
    public PlannerParameters withDripFamily(String key) {
        return withPlacement(placement.withDrip(placement.drip().withFamily(key)));
    }

    /** No two rows of drip line are further apart than that; without it the soil says how far. */
    public PlannerParameters withDripRows(Length apart) {
        return withPlacement(placement.withDrip(placement.drip().withRows(apart)));
    }
}
