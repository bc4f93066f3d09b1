/** Runs each example, holds its figures, and damages it to see exactly the findings that follow. */
package leat.examples;
