package leat.calc.workplan;

import leat.calc.digging.DiggingResult;
import leat.calc.phasing.PhasingResult;
import leat.model.fault.Require;
import leat.model.quantity.Count;

/**
 * What the order of the works is made from.
 *
 * @param digging trenches as they are dug
 * @param phasing ends of what is laid ahead
 * @param notice  working days between the request for marks and the first spade; default 3. State one-call laws of the
 *     United States ask for 2 to 10; other countries have their own
 */
public record WorkPlanParameters(DiggingResult digging, PhasingResult phasing, Count notice) {

    public WorkPlanParameters {
        Require.present("work plan", "digging", digging);
        Require.present("work plan", "phasing", phasing);
        Require.atLeast("work plan", "notice", notice, Count.of(0));
    }

    public static WorkPlanParameters of(DiggingResult digging, PhasingResult phasing) {
        return new WorkPlanParameters(digging, phasing, Count.of(3));
    }

    public WorkPlanParameters withNotice(Count workingDays) {
        return new WorkPlanParameters(digging, phasing, workingDays);
    }
}
