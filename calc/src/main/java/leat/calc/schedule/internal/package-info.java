/**
 * Kernels of the watering schedule: reference evapotranspiration, water in the soil, run times, the order of valves in a
 * day. The formulas of evapotranspiration are empirical and keep the units of their paper (kPa, MJ, °C, hours), said in
 * every name; all others are SI.
 */
@NullMarked
package leat.calc.schedule.internal;

import org.jspecify.annotations.NullMarked;
