package leat.calc.schedule;

import java.util.List;
import leat.calc.Progress;
import leat.model.fault.InvalidValueException;
import leat.model.fault.UnfinishedException;
import leat.model.finding.Ledger;
import leat.model.finding.Status;
import leat.model.id.ZoneId;
import leat.model.plan.Site;

/** The calculation of run times: by month, and for the week that asks for most. Changes nothing. */
public final class Schedule {

    private Schedule() {}

    /** Without a climate there is no schedule, and at most a note that says so. */
    public static ScheduleResult run(Site site, ScheduleParameters parameters, Progress progress) {
        if (progress.stopped()) {
            return ScheduleResult.without(Status.STOPPED, List.of());
        }
        progress.at(0, "watering schedule");
        ScheduleResult result = new SchedulePass(site, parameters).result();
        progress.at(1, "watering schedule");
        return result;
    }

    /**
     * How a figure of a zone came about; its last line equals the figure to the last bit.
     *
     * @param figure {@code use}, {@code net} or {@code gross} (depths a day), {@code rain} (of the month), {@code held} (by the
     *     soil), {@code interval} (days), {@code days} (a week), {@code cycles}, {@code cycle}, {@code soak}, {@code minutes} (a
     *     week) or {@code volume} (of the month), then the month or {@code peak}, such as {@code minutes July}
     * @throws InvalidValueException if there is no such figure
     * @throws UnfinishedException if the zone has no schedule
     */
    public static Ledger why(Site site, ScheduleParameters parameters, ZoneId zone, String figure) {
        return new ScheduleLedger(site, parameters, new SchedulePass(site, parameters).result()).of(zone, figure);
    }

    /**
     * How a figure of the whole yard came about; its last line equals the figure to the last bit.
     *
     * @param figure {@code minutes} or {@code volume} and a month, {@code volume year}, {@code volume peak} or
     *     {@code hours peak}
     * @throws InvalidValueException if there is no such figure
     * @throws UnfinishedException if there is no schedule
     */
    public static Ledger why(Site site, ScheduleParameters parameters, String figure) {
        return new YardWaterLedger(new SchedulePass(site, parameters).result()).of(figure);
    }
}
