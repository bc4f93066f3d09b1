/**
 * The shape of the whole, held by tests: who may use what, what a calculation may not touch, how types look.
 * <p>
 * Every rule is a function of the root package. {@link leat.architecture.ArchitectureTest} puts it to {@code leat};
 * {@link leat.architecture.PlantedTest} puts it to violations planted under {@code leat.architecture.planted.RULE},
 * and so proves that it would catch them.
 */
@NullMarked
package leat.architecture;

import org.jspecify.annotations.NullMarked;
