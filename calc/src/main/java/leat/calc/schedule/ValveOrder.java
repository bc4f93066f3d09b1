package leat.calc.schedule;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.model.id.SourceId;
import leat.model.id.ZoneId;
import leat.model.water.PipeFeeds;
import leat.model.water.WaterSystem;
import leat.model.water.Zone;

/** Which zones wait for each other: those that the same source feeds. */
final class ValveOrder {

    private final SortedMap<ZoneId, SourceId> sources = new TreeMap<>();

    ValveOrder(WaterSystem water) {
        PipeFeeds feeds = water.feeds();
        for (Zone zone : water.zones()) {
            water.manifoldOf(zone.valve())
                    .flatMap(manifold -> manifold.on())
                    .flatMap(feeds::sourceOf)
                    .ifPresent(source -> sources.put(zone.id(), source.id()));
        }
    }

    /** Zones whose source is not known yet wait for each other too: most yards have one. */
    String queueOf(ZoneId zone) {
        return sourceOf(zone).map(SourceId::name).orElse("");
    }

    Optional<SourceId> sourceOf(ZoneId zone) {
        return Optional.ofNullable(sources.get(zone));
    }

    List<String> queues(List<ZoneGround> grounds) {
        TreeSet<String> queues = new TreeSet<>();
        grounds.forEach(ground -> queues.add(queueOf(ground.zone())));
        return List.copyOf(queues);
    }
}
