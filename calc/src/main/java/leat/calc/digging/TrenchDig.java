package leat.calc.digging;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import leat.model.fault.Require;
import leat.model.id.SegmentId;
import leat.model.quantity.Area;
import leat.model.quantity.Length;
import leat.model.quantity.Volume;
import leat.model.site.Phase;
import leat.model.site.SurfaceKind;

/**
 * One trench as it is dug.
 *
 * @param onPlan   length, level
 * @param onGround length along the finished grade
 * @param depth    from finished grade to its bottom
 * @param width    of its bottom, for the tool and for what lies in it
 * @param laid     lowest layer first
 * @param earth    what most of it is dug in
 * @param bank     volume of the earth as it lies
 * @param loose    volume of that earth when it is thrown out
 * @param bedding  of sand or screened earth around what lies in it
 * @param backfill to be filled again with earth, tamped
 * @param cut      area of lawn, bed or paving that is opened, to be made good
 */
public record TrenchDig(
        SegmentId id,
        Phase phase,
        boolean byHand,
        Length onPlan,
        Length onGround,
        Length depth,
        Length width,
        List<LaidDepth> laid,
        Earth earth,
        Volume bank,
        Volume loose,
        Volume bedding,
        Volume backfill,
        SortedMap<SurfaceKind, Area> cut) {

    public TrenchDig {
        Require.present("trench", "id", id);
        laid = List.copyOf(laid);
        cut = Collections.unmodifiableSortedMap(new TreeMap<>(cut));
    }
}
