package leat.model.plan;

import static leat.model.Refusals.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import leat.model.id.HeadId;
import leat.model.id.Id;
import leat.model.id.PipeId;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class PlannedTest {

    private final Yard plot = Example.plot();

    @Tag("law")
    @RepeatedTest(100)
    void pinUndoesReleaseAndTouchesNothingElse(RepetitionInfo turn) {
        Random random = new Random(turn.getCurrentRepetition());
        List<Id> ids = new ArrayList<>(Yard.plannable(plot.water(), plot.power(), plot.trenches()));
        Yard yard = plot;
        for (int i = random.nextInt(8); i > 0; i--) {
            yard = yard.release(ids.get(random.nextInt(ids.size())), Aspect.values()[random.nextInt(4)]);
        }
        Id id = ids.get(random.nextInt(ids.size()));
        Aspect aspect = Aspect.values()[random.nextInt(4)];
        Yard released = yard.release(id, aspect);
        assertTrue(released.isPlanned(id, aspect));
        assertEquals(released, released.release(id, aspect), "twice is once");
        Yard pinned = released.pin(id, aspect);
        assertFalse(pinned.isPlanned(id, aspect));
        assertEquals(pinned, pinned.pin(id, aspect));
        assertEquals(yard.pin(id, aspect), pinned);
        for (Id other : ids) {
            for (Aspect each : Aspect.values()) {
                if (!other.equals(id) || each != aspect) {
                    assertEquals(yard.isPlanned(other, each), pinned.isPlanned(other, each));
                }
            }
        }
        assertEquals(plot.water(), pinned.water());
    }

    @Tag("law")
    @Test
    void allIsGivenUntilAStageOrTheUserReleasesIt() {
        assertEquals(Planned.NOTHING, plot.planned());
        Id head = new HeadId("S1");
        Planned planned = Planned.NOTHING.with(head, Aspect.POSITION, Aspect.ZONE);
        assertTrue(planned.has(head, Aspect.ZONE));
        assertEquals(Planned.NOTHING, planned.without(head, Aspect.ZONE, Aspect.POSITION), "nothing is kept of it");
        assertEquals(planned, Planned.NOTHING.with(List.of(head), Aspect.ZONE).with(head, Aspect.POSITION));
        assertEquals(Planned.NOTHING, planned.only(Set.of(new PipeId("F1"))));
        assertEquals(planned, planned.only(Set.of(head)));
    }

    @Tag("law")
    @Test
    void partsToComeLeaveWhatIsPlannedAsItIs() {
        Yard released = plot.release(new PipeId("F1"), Aspect.SIZE);
        Yard grown = released.with(Parts.bib("far", Parts.at(3, 3)).on("main"));
        assertEquals(released.planned(), grown.planned());
    }

    @Tag("pinned")
    @Test
    void whatIsNotThereCannotBePinnedOrReleased() {
        refused(
                "plan: head is 'S9', which is not there; it must be a thing that can be planned; perhaps 'S1'",
                () -> plot.pin(new HeadId("S9"), Aspect.POSITION));
        refused(
                "plan: pipe is 'mian', which is not there; it must be a thing that can be planned; perhaps 'main'",
                () -> plot.release(new PipeId("mian"), Aspect.SIZE));
    }
}
