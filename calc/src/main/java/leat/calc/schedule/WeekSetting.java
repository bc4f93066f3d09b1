package leat.calc.schedule;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import leat.calc.schedule.internal.Application;
import leat.calc.schedule.internal.WeekDays;
import leat.model.catalog.IntakeRate;
import leat.model.id.ZoneId;
import leat.model.quantity.Count;
import leat.model.quantity.Length;
import leat.model.quantity.TimeSpan;
import leat.model.water.WateringNeeds;

/**
 * Sets all zones for a week: the days, so that the soil holds out and no day gets too busy, and on each day minutes and
 * cycles. Zones that run longest choose their days first.
 */
final class WeekSetting {

    private final WateringNeeds needs;
    private final ValveOrder order;
    private final Length surfaceStorage;

    WeekSetting(WateringNeeds needs, ValveOrder order, Length surfaceStorage) {
        this.needs = needs;
        this.order = order;
        this.surfaceStorage = surfaceStorage;
    }

    /** The setting of each zone; balances are parallel to grounds. */
    SortedMap<ZoneId, ZoneSetting> of(List<ZoneGround> grounds, List<WaterBalance> balances) {
        List<Integer> longestFirst = new ArrayList<>();
        for (int i = 0; i < grounds.size(); i++) {
            longestFirst.add(i);
        }
        longestFirst.sort(Comparator.comparingDouble((Integer i) -> -weekS(grounds.get(i), balances.get(i)))
                .thenComparing(i -> grounds.get(i).zone()));
        SortedMap<String, double[]> busyS = new TreeMap<>();
        SortedMap<ZoneId, ZoneSetting> settings = new TreeMap<>();
        for (int i : longestFirst) {
            ZoneGround ground = grounds.get(i);
            double[] busy = busyS.computeIfAbsent(order.queueOf(ground.zone()), key -> new double[WeekDays.DAYS]);
            settings.put(ground.zone(), setting(ground, balances.get(i), busy));
        }
        return settings;
    }

    private ZoneSetting setting(ZoneGround ground, WaterBalance balance, double[] busyS) {
        double weekS = weekS(ground, balance);
        if (weekS <= 0) {
            return ZoneSetting.OFF;
        }
        int days = WeekDays.choose(allowed(), (int) balance.interval().value(), weekS, busyS);
        double runS = weekS / Integer.bitCount(days);
        double rateMPerS = ground.rate().si();
        double intakeMPerS =
                ground.intake().map(IntakeRate::most).map(rate -> rate.si()).orElse(rateMPerS);
        double longestS = Application.longestCycleS(rateMPerS, intakeMPerS, surfaceStorage.metres());
        int cycles = Application.cycles(runS, longestS);
        double cycleMinutes = Math.ceil(runS / cycles / 60 - 1e-9);
        double soakMinutes =
                cycles > 1 ? Math.ceil(Application.soakS(cycleMinutes * 60, rateMPerS, intakeMPerS) / 60 - 1e-9) : 0;
        SortedSet<DayOfWeek> chosen = new TreeSet<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            if (WeekDays.has(days, day.ordinal())) {
                chosen.add(day);
                busyS[day.ordinal()] += cycles * cycleMinutes * 60;
            }
        }
        return new ZoneSetting(
                chosen,
                Count.of(cycles),
                TimeSpan.minutes(cycleMinutes),
                TimeSpan.minutes(soakMinutes),
                TimeSpan.minutes(cycleMinutes * cycles * chosen.size()));
    }

    private static double weekS(ZoneGround ground, WaterBalance balance) {
        return Application.runS(
                balance.gross().metres() * WeekDays.DAYS, ground.rate().si());
    }

    private int allowed() {
        int days = 0;
        for (DayOfWeek day : DayOfWeek.values()) {
            days |= needs.mayRunOn(day) ? 1 << day.ordinal() : 0;
        }
        return days;
    }
}
