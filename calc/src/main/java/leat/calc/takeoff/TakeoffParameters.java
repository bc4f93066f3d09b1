package leat.calc.takeoff;

import java.util.Optional;
import leat.calc.digging.DiggingResult;
import leat.calc.wiring.WiringResult;
import leat.model.fault.Require;
import leat.model.quantity.Angle;
import leat.model.quantity.Count;
import leat.model.quantity.Length;

/**
 * What the designer may choose about counting.
 *
 * @param straight    a bend of less needs no fitting; default 22.5 degrees, half way between none and a 45 degree elbow
 * @param sharp       a bend of this or more takes a 90 degree elbow; default 67.5 degrees. Coils bend by themselves up to
 *                    here
 * @param belowPipe   depth of a trench below the cover that a pipe without a trench would have; default 50 mm, common
 *                    practice, no source
 * @param bibHeight   of a hose bib above grade; default 600 mm, common practice, no source
 * @param valveDepth  of the valves below grade; default 200 mm, common practice, no source
 * @param valveSpace  between valves side by side; default 150 mm, common practice, no source
 * @param coil        stock at least so long is a coil; default 12 m, common practice, no source
 * @param slackAtBox   of each conductor at each of its ends; default 300 mm, common practice, no source (NEC 300.14 asks
 *                     for 150 mm at least)
 * @param boxHeight    of outlets, switches and the like above grade; default 450 mm, common practice, no source
 * @param conduitStick length of rigid conduit as it is bought; default 10 ft, common practice, no source
 * @param conduitCoil  length of corrugated duct as it is bought; default 50 m, common practice, no source
 * @param wiring       of the same site; without it grounding conductors count in the size of the others, which is never too
 *                     thin
 * @param digging      of the same site; without it there is no bedding, no warning tape and no digging
 * @param searchSteps effort of the search for the best cut of each material; default 200,000
 */
public record TakeoffParameters(
        Angle straight,
        Angle sharp,
        Length belowPipe,
        Length bibHeight,
        Length valveDepth,
        Length valveSpace,
        Length coil,
        Length slackAtBox,
        Length boxHeight,
        Length conduitStick,
        Length conduitCoil,
        Optional<WiringResult> wiring,
        Optional<DiggingResult> digging,
        Count searchSteps) {

    public TakeoffParameters {
        Require.atLeast("takeoff", "straight", straight, Angle.ZERO);
        Require.atLeast("takeoff", "sharp", sharp, straight);
        Require.atLeast("takeoff", "belowPipe", belowPipe, Length.ZERO);
        Require.atLeast("takeoff", "bibHeight", bibHeight, Length.ZERO);
        Require.atLeast("takeoff", "valveDepth", valveDepth, Length.ZERO);
        Require.atLeast("takeoff", "valveSpace", valveSpace, Length.ZERO);
        Require.moreThan("takeoff", "coil", coil, Length.ZERO);
        Require.atLeast("takeoff", "slackAtBox", slackAtBox, Length.ZERO);
        Require.atLeast("takeoff", "boxHeight", boxHeight, Length.ZERO);
        Require.moreThan("takeoff", "conduitStick", conduitStick, Length.ZERO);
        Require.moreThan("takeoff", "conduitCoil", conduitCoil, Length.ZERO);
        Require.present("takeoff", "wiring", wiring);
        Require.present("takeoff", "digging", digging);
        Require.atLeast("takeoff", "searchSteps", searchSteps, Count.ZERO);
    }

    public static TakeoffParameters defaults() {
        return new TakeoffParameters(
                Angle.degrees(22.5),
                Angle.degrees(67.5),
                Length.millimetres(50),
                Length.millimetres(600),
                Length.millimetres(200),
                Length.millimetres(150),
                Length.metres(12),
                Length.millimetres(300),
                Length.millimetres(450),
                Length.feet(10),
                Length.metres(50),
                Optional.empty(),
                Optional.empty(),
                Count.of(200_000));
    }

    public TakeoffParameters withDigging(DiggingResult result) {
        return with(wiring, Optional.of(result));
    }

    public TakeoffParameters withWiring(WiringResult result) {
        return with(Optional.of(result), digging);
    }

    private TakeoffParameters with(Optional<WiringResult> newWiring, Optional<DiggingResult> newDigging) {
        return new TakeoffParameters(
                straight,
                sharp,
                belowPipe,
                bibHeight,
                valveDepth,
                valveSpace,
                coil,
                slackAtBox,
                boxHeight,
                conduitStick,
                conduitCoil,
                newWiring,
                newDigging,
                searchSteps);
    }
}
