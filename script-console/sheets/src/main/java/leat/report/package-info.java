/**
 * What a builder takes into the garden: the plan drawing, the page with schedules and findings, and tables for other
 * programs.
 * <p>
 * Enter through {@link leat.report.Report}. Nothing is computed here and nothing is written to a disk: results come in,
 * named bytes go out, the same for the same plan. ReportFigures are rounded here and nowhere before, in the yard's units.
 */
@NullMarked
package leat.report;

import org.jspecify.annotations.NullMarked;
