package leat.calc.wiring;

import static leat.model.plan.Parts.electricalCode;
import static leat.model.plan.Parts.limit;
import static leat.model.plan.Parts.yard;

import java.util.Optional;
import leat.document.StandingData;
import leat.model.geometry.Point;
import leat.model.id.OutletId;
import leat.model.plan.Part;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.power.Ahead;
import leat.model.power.CodeFamily;
import leat.model.power.Outlet;
import leat.model.quantity.Power;
import leat.model.quantity.Quantity;
import leat.model.site.Phase;

/** Both families of codes on the standing tables. */
final class Codes {

    static final ElectricalCode NFPA = of(CodeFamily.NFPA_70);
    static final ElectricalCode IEC = of(CodeFamily.IEC_60364);

    private Codes() {}

    static Site site(CodeFamily family, Part... more) {
        Yard bare = yard("A").with(electricalCode(family));
        return StandingData.load(Yard.EDITION).siteOf(more.length == 0 ? bare : bare.with(more));
    }

    static ElectricalCode of(CodeFamily family) {
        return ElectricalCode.of(site(family));
    }

    static ElectricalCode of(CodeFamily family, String rule, Quantity stated) {
        return ElectricalCode.of(site(family, limit(rule, stated)));
    }

    static Outlet outlet() {
        return new Outlet(
                new OutletId("court"),
                new Point(0, 0),
                false,
                new Power(1_440),
                Optional.empty(),
                Phase.NOW,
                Ahead.NOTHING);
    }
}
