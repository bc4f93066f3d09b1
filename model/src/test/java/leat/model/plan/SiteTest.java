package leat.model.plan;

import static leat.model.Refusals.refused;
import static leat.model.plan.Parts.*;
import static org.junit.jupiter.api.Assertions.assertEquals;

import leat.document.StandingData;
import leat.model.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class SiteTest {

    private static Site site(Part... parts) {
        StandingData tables = StandingData.load(Yard.EDITION);
        return Site.of(yard("A").with(parts), tables.catalog(), tables.rules());
    }

    @Tag("law")
    @Test
    void theYardsOwnRowsStandBesideThoseOfTheTables() {
        Site site = site(
                sprayFamily("mine")
                        .radius(feet(8), feet(12))
                        .pressure(psi(20), psi(30), psi(70))
                        .flow(gpm(1)),
                spray("S1", at(0, 0)).family("mine").fullCircle().radius(feet(10)));
        assertEquals(gpm(1), site.catalog().head("mine").jet().flow());
        assertEquals(Length.feet(12), site.catalog().head("mine").jet().radius());
    }

    @Tag("pinned")
    @Test
    void keysThatAreNotInTheCatalogueNameWhoAskedAndTheNearest() {
        refused(
                "head S1, head family: key is 'spray-37'; it must be a key of the catalogue; perhaps 'spray-3_7'",
                () -> site(spray("S1", at(0, 0)).family("spray-37").fullCircle().radius(feet(10))));
        refused(
                "head S1: family is 'spray-3_7', which makes a spray; it must be a family that makes a rotor",
                () -> site(
                        rotor("S1", at(0, 0)).family("spray-3_7").fullCircle().radius(feet(10))));
        refused(
                "surface front, soil: key is 'slit loam'; it must be a key of the catalogue; perhaps 'silt loam'",
                () -> site(lawn("front", rectangle(at(0, 0), feet(9), feet(9))).soil("slit loam")));
        refused(
                "source s: device is 'valve-1', which is a zone valve; it must be the key of a device that is a meter",
                () -> site(mains("s", at(0, 0)).staticPressure(psi(50)).meter("valve-1")));
    }

    @Tag("pinned")
    @Test
    void sizesOfConductorsAndConduitsMustBeInTheTablesOfTheFamily() {
        ConduitPart trunk = conduit("trunk", polyline(at(0, 0), at(9, 0))).series("PVC-40");
        refused(
                "conduit trunk, conductor: size is '13'; it must be a size of conductor: "
                        + "18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 1/0, 2/0, 3/0, 4/0",
                () -> site(electricalCode(NFPA_70), trunk.occupied("13", 2)));
        refused(
                "conduit trunk, conduit PVC-40: size is '7/8'; it must be a trade size: "
                        + "1/2, 3/4, 1, 1-1/4, 1-1/2, 2, 2-1/2, 3, 3-1/2, 4",
                () -> site(trunk.size("7/8")));
        refused(
                "conduit trunk, conduit: series is 'PVC-41'; it must be a series of conduit: "
                        + "EMT, IMC, LFNC-A, LFNC-B, PVC-40, PVC-80, RMC, duct, rigid",
                () -> site(trunk.series("PVC-41")));
    }
}
