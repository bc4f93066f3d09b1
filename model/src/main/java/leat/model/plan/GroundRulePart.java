package leat.model.plan;

import leat.model.id.DigZoneId;
import leat.model.id.LineId;
import leat.model.id.ServiceId;
import leat.model.quantity.Length;
import leat.model.site.DigZone;
import leat.model.site.ExistingService;
import leat.model.site.LimitLine;

/** Something in the ground, or drawn on the plan, that digging has to mind. */
public final class GroundRulePart extends Part {

    /** Turns the part into the thing it stands for, once the doubt is known. */
    interface Maker {
        void add(YardDraft draft, Length doubt);
    }

    private final Maker maker;
    private final Length doubt;

    private GroundRulePart(Maker maker, Length doubt) {
        this.maker = maker;
        this.doubt = doubt;
    }

    static GroundRulePart service(String name, ExistingService.Kind kind, Path route) {
        return new GroundRulePart(
                (draft, doubt) -> draft.service(new ExistingService(
                        new ServiceId(name), kind, route.in(draft.units(), "existing service " + name), doubt)),
                Length.ZERO);
    }

    static GroundRulePart zone(String name, DigZone.Kind kind, Outline outline) {
        return new GroundRulePart(
                (draft, doubt) -> draft.digZone(new DigZone(
                        new DigZoneId(name), kind, outline.in(draft.units(), "digging rule " + name), doubt)),
                Length.ZERO);
    }

    static GroundRulePart line(String name, LimitLine.Kind kind, Path line) {
        return new GroundRulePart(
                (draft, doubt) -> {
                    if (!doubt.equals(Length.ZERO)) {
                        draft.complain(
                                "limit line " + name + ": it has a doubt; a line on the plan lies where it is drawn");
                    }
                    draft.limitLine(
                            new LimitLine(new LineId(name), kind, line.in(draft.units(), "limit line " + name)));
                },
                Length.ZERO);
    }

    /** How far from where it is drawn it may really lie. */
    public GroundRulePart doubt(Length newDoubt) {
        return new GroundRulePart(maker, newDoubt);
    }

    @Override
    void addTo(YardDraft draft) {
        maker.add(draft, doubt);
    }
}
