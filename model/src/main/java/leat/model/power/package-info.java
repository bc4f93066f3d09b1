/**
 * Panel, circuits, what they feed, and the conduits and cables that do it; the controller and its valve wires.
 * {@link leat.model.power.PowerSystem} holds them all.
 */
@NullMarked
package leat.model.power;

import org.jspecify.annotations.NullMarked;
