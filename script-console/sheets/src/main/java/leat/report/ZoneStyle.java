package leat.report;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.draw.Colour;
import leat.draw.Dash;
import leat.draw.LineWidth;
import leat.draw.Palette;
import leat.draw.Style;
import leat.model.id.HeadId;
import leat.model.id.ZoneId;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;

/**
 * How zones are told apart: heads and arcs of a zone share a colour and a dash that no water has, so that a zone is
 * never taken for a kind of water. Sixteen zones differ; after that the styles come round again.
 */
record ZoneStyle(Colour colour, Dash dash) {

    /** For heads that are in no zone yet. */
    static final ZoneStyle NONE = new ZoneStyle(Palette.GREY, Dash.SHORT_DASHED);

    private static final List<Colour> COLOURS =
            List.of(Palette.VERMILION, Palette.SKY, Palette.ORANGE, Palette.DARK_GREY);
    private static final List<Dash> DASHES = List.of(Dash.SOLID, Dash.DASHED, Dash.DASH_DOT, Dash.SHORT_DASHED);

    static ZoneStyle of(int index) {
        return new ZoneStyle(
                COLOURS.get(index % COLOURS.size()), DASHES.get((index + index / COLOURS.size()) % DASHES.size()));
    }

    /** Styles in the order of the zones. */
    static SortedMap<ZoneId, ZoneStyle> of(WaterSystem water) {
        SortedMap<ZoneId, ZoneStyle> styles = new TreeMap<>();
        for (Zone zone : water.zones()) {
            styles.put(zone.id(), of(styles.size()));
        }
        return styles;
    }

    /** Styles of all heads that are in a zone. */
    static SortedMap<HeadId, ZoneStyle> ofHeads(WaterSystem water) {
        SortedMap<ZoneId, ZoneStyle> zones = of(water);
        SortedMap<HeadId, ZoneStyle> styles = new TreeMap<>();
        water.zones()
                .forEach(zone -> zone.heads().forEach(head -> styles.put(head, zones.getOrDefault(zone.id(), NONE))));
        return styles;
    }

    Style arc() {
        return Style.line(LineWidth.W018, colour).withDash(dash);
    }
}
