/**
 * Drawings to scale: a retained canvas in millimetres on the sheet, and what every sheet needs around a plan.
 * <p>
 * Enter through {@link leat.draw.Canvas}: begin layers and items, add shapes and texts, take the {@link
 * leat.draw.Drawing}, and write it with {@link leat.draw.SvgWriter}. {@link leat.draw.SheetFit} chooses sheet and
 * scale, {@link leat.draw.View} turns metres of the yard into millimetres of the sheet, {@link
 * leat.draw.LabelPlacer} keeps labels off each other. Nothing here knows a yard; that is leat.report's.
 * <p>
 * Sheet coordinates run right (x) and down (y), in millimetres from the top left corner. The same calls give the same
 * bytes, on any machine: text is measured from a table of advance widths, never through the system's fonts.
 */
@NullMarked
package leat.draw;

import org.jspecify.annotations.NullMarked;
