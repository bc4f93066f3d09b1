package leat.architecture.planted.parallel.calc.coverage;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;

final class Parallel {

    static long badCollection(List<String> heads) {
        return heads.parallelStream().count();
    }

    static int badStream() {
        return IntStream.range(0, 9).parallel().sum();
    }

    static void badSort(double[] radiiM) {
        Arrays.parallelSort(radiiM);
    }

    static int badPool() {
        return ForkJoinPool.commonPool().getParallelism();
    }

    static CompletableFuture<String> badFuture() {
        return CompletableFuture.completedFuture("done");
    }

    static boolean badThread() {
        return Thread.currentThread().isInterrupted();
    }

    static int goodStream() {
        return IntStream.range(0, 9).sum();
    }
}
