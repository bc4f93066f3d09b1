package leat.architecture.planted.clocks.calc.coverage;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.Date;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Supplier;

@SuppressWarnings({"JavaUtilDate", "JavaTimeDefaultTimeZone", "TimeZoneUsage"})
final class Clocks {

    static long badNano() {
        return System.nanoTime();
    }

    static long badMillis() {
        return System.currentTimeMillis();
    }

    static String badEnvironment() {
        return System.getenv("HOME");
    }

    static String badProperty() {
        return System.getProperty("user.dir");
    }

    static String badLine() {
        return System.lineSeparator();
    }

    static Integer badNumberProperty() {
        return Integer.getInteger("threads");
    }

    static int badProcessors() {
        return Runtime.getRuntime().availableProcessors();
    }

    static int badIdentity(Object any) {
        return System.identityHashCode(any);
    }

    static Instant badInstant() {
        return Instant.now();
    }

    static Supplier<Instant> badReference() {
        return Instant::now;
    }

    static LocalDate badDate() {
        return LocalDate.now(ZoneOffset.UTC);
    }

    static Clock badClock() {
        return Clock.systemUTC();
    }

    static ZoneId badZone() {
        return ZoneId.systemDefault();
    }

    static Date badOldDate() {
        return new Date();
    }

    static Calendar badCalendar() {
        return Calendar.getInstance();
    }

    static TimeZone badOldZone() {
        return TimeZone.getDefault();
    }

    static Locale badLocale() {
        return Locale.getDefault();
    }

    static boolean badResource() {
        return Clocks.class.getResource("table.csv") == null;
    }

    static boolean badLoader() {
        return Clocks.class.getClassLoader().getResource("table.csv") == null;
    }

    static LocalDate goodDate() {
        return LocalDate.of(2026, 4, 1);
    }

    static Date goodOldDate() {
        return new Date(0);
    }
}
