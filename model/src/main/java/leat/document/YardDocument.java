package leat.document;

import java.util.Map;
import leat.model.catalog.Additions;
import leat.model.catalog.Costs;
import leat.model.fault.InvalidValueException;
import leat.model.plan.Planned;
import leat.model.plan.Site;
import leat.model.plan.Yard;
import leat.model.power.PowerSystem;
import leat.model.quantity.UnitSystem;
import leat.model.site.Terrain;
import leat.model.water.WaterSystem;
import leat.model.water.WateringNeeds;

/**
 * A yard as text: JSON that a person can read and edit, described in docs/reference/yard-document.md. Reading what was
 * written gives an equal yard; writing it again gives the same text.
 */
public final class YardDocument {

    /** What the field {@code format} of every document of a yard says. */
    public static final String FORMAT = "leat-yard";

    /** The version that is written; earlier ones can be read. */
    public static final int VERSION = Versions.NEWEST;

    private YardDocument() {}

    /** The text of the whole yard, with quantities in its own units; ends with a line feed. */
    public static String write(Yard yard) {
        UnitSystem units = yard.units();
        Map<String, Object> fields = new FieldWriter(units)
                .text("format", FORMAT)
                .number("version", VERSION)
                .text("edition", yard.edition())
                .text("name", yard.name())
                .word("units", units)
                .object("site", SiteSection.written(yard.terrain(), units))
                .object("water", WaterSection.written(yard.water(), units))
                .object("power", PowerSection.written(yard.power(), units))
                .list("trenches", Lists.map(yard.trenches(), one -> TrenchFields.written(one, units)))
                .object("watering", WateringSection.written(yard.watering(), units))
                .list("temporary", Lists.map(yard.temporary(), one -> TemporaryFields.written(one, units)))
                .object("costs", CostsSection.written(yard.costs(), units))
                .object("planned", PlannedSection.written(yard.planned()))
                .object("additions", AdditionsSection.written(yard.additions(), units))
                .fields();
        return JsonText.print(fields);
    }

    /**
     * The yard that the text describes.
     *
     * @param fileName for messages
     * @throws DocumentException if the text is no document of a yard, or describes one that cannot be
     */
    public static Yard read(String text, String fileName) {
        return read(Versions.current(text, fileName), new Places());
    }

    /**
     * The yard on the standing tables of its edition. That it names something that is not in them is told with its place
     * in the text.
     *
     * @throws DocumentException as {@link #read}, and if the yard names a key or a rule that is not there
     */
    public static Site readSite(String text, String fileName) {
        Json root = Versions.current(text, fileName);
        Places places = new Places();
        Yard yard = read(root, places);
        try {
            return StandingData.load(yard.edition()).siteOf(yard);
        } catch (InvalidValueException e) {
            throw places.fault(root, e);
        }
    }

    private static Yard read(Json root, Places places) {
        FieldReader in = FieldReader.of(
                root,
                "document of a yard",
                places,
                "format",
                "version",
                "edition",
                "name",
                "units",
                "site",
                "water",
                "power",
                "trenches",
                "watering",
                "temporary",
                "costs",
                "planned",
                "additions");
        String edition = in.text("edition");
        in.spot("edition").guard(() -> StandingData.known(edition));
        return in.made(() -> new Yard(
                in.text("name"),
                in.word("units", UnitSystem.class),
                edition,
                in.optional("site", new SiteSection(places)::read).orElse(Terrain.EMPTY),
                in.optional("water", new WaterSection(places)::read).orElse(WaterSystem.EMPTY),
                in.optional("power", new PowerSection(places)::read).orElse(PowerSystem.EMPTY),
                in.list("trenches", new TrenchFields(places)::read),
                in.optional("watering", new WateringSection(places)::read).orElse(WateringNeeds.NONE),
                in.optional("costs", new CostsSection(places)::read).orElse(Costs.NONE),
                in.list("temporary", new TemporaryFields(places)::read),
                in.optional("planned", new PlannedSection(places)::read).orElse(Planned.NOTHING),
                in.optional("additions", new AdditionsSection(places, edition)::read)
                        .orElse(Additions.NONE)));
    }
}
