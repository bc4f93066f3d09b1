/**
 * Benchmarks: our kernels against what a user would pick instead, on the same instance, in one process.
 * <p>
 * Run {@code sh calc/bench NAME [INSTANCE.json]}; without a name it prints the names. To add one, write a class that
 * implements {@link leat.bench.Bench} and list it in {@link leat.bench.Benches}. A time counts only if the answers
 * agree.
 */
@NullMarked
package leat.bench;

import org.jspecify.annotations.NullMarked;
