package leat.document;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import leat.model.id.SurfaceId;
import leat.model.quantity.Angle;
import leat.model.quantity.Length;
import leat.model.quantity.Ratio;
import leat.model.quantity.Velocity;
import leat.model.site.Surface;
import leat.model.site.Terrain;
import leat.model.water.Climate;
import leat.model.water.ClimateMonth;
import leat.model.water.GrowingPlace;
import leat.model.water.Sunshine;
import leat.model.water.WateringHours;
import leat.model.water.WateringNeeds;

/** What a yard says of its watering, drawn from the same stream as the yard. */
final class RandomWatering {

    private final RandomYards draw;

    RandomWatering(RandomYards draw) {
        this.draw = draw;
    }

    WateringNeeds needs(Terrain terrain) {
        boolean own = draw.coin();
        SortedMap<SurfaceId, GrowingPlace> places = new TreeMap<>();
        for (SurfaceId id :
                draw.some(terrain.surfaces().stream().map(Surface::id).toList())) {
            places.put(id, new GrowingPlace(draw.any(GrowingPlace.Grade.class), draw.any(GrowingPlace.Grade.class)));
        }
        return new WateringNeeds(
                own ? Optional.empty() : draw.maybe(draw::name),
                own ? draw.maybe(this::climate) : Optional.empty(),
                new TreeSet<>(draw.some(List.of(DayOfWeek.values()))),
                draw.maybe(this::hours),
                new TreeSet<>(draw.some(List.of(Month.values()))),
                places);
    }

    private WateringHours hours() {
        int from = (int) (draw.share() * 1_439);
        int until = (int) (1 + draw.share() * 1_439);
        return until == from ? WateringHours.WHOLE_DAY : new WateringHours(from, until);
    }

    private Climate climate() {
        return new Climate(
                draw.name(),
                new Angle(180 * draw.share() - 90),
                new Length(9_500 * draw.share() - 500),
                Stream.of(Month.values()).map(this::month).toList());
    }

    private ClimateMonth month(Month month) {
        double lowC = 60 * draw.share() - 30;
        double highC = lowC + 20 * draw.share();
        return new ClimateMonth(
                month,
                lowC,
                highC,
                draw.maybe(() -> lowC - 5 * draw.share()),
                draw.maybe(() -> Ratio.of(0.01 + 0.99 * draw.share())),
                draw.maybe(() -> Velocity.metresPerSecond(9 * draw.share())),
                new Sunshine(
                        draw.maybe(() -> 14 * draw.share()),
                        draw.maybe(() -> Ratio.of(draw.share())),
                        draw.maybe(() -> 40 * draw.share())),
                draw.maybe(() -> Length.millimetres(300 * draw.share())));
    }
}
