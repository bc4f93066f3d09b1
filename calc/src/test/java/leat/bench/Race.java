package leat.bench;

import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Times one entrant after the other through JMH, in this process. JMH needs the class to be public. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.SECONDS)
public class Race {

    /** Static, for JMH makes the state itself and runs in this process. */
    private static @Nullable Entrant running;

    private @Nullable Entrant entrant;

    /** Called by JMH. */
    @org.openjdk.jmh.annotations.Setup
    public void take() {
        entrant = running;
    }

    /** Called by JMH. */
    @Benchmark
    public double solve() {
        Entrant current = entrant;
        if (current == null) {
            throw new IllegalStateException("no entrant");
        }
        return current.solve();
    }

    /** Median over the iterations of the mean time of one solution, in seconds. */
    static double seconds(Entrant entrant) throws RunnerException {
        System.setProperty("jmh.ignoreLock", "true");
        running = entrant;
        var options = new OptionsBuilder()
                .include("^" + Race.class.getName().replace(".", "\\.") + "\\.solve$")
                .forks(0)
                .warmupIterations(4)
                .warmupTime(TimeValue.seconds(1))
                .measurementIterations(7)
                .measurementTime(TimeValue.seconds(1))
                .verbosity(VerboseMode.SILENT)
                .build();
        var result = new Runner(options).runSingle();
        return result.getPrimaryResult().getStatistics().getPercentile(50);
    }
}
