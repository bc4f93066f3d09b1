/**
 * When and how long each zone runs: the water that the plants use by month, what rain gives of it, what the soil holds, and
 * what follows for minutes, cycles and days.
 */
@NullMarked
package leat.calc.schedule;

import org.jspecify.annotations.NullMarked;
