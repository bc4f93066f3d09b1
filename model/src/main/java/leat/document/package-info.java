/**
 * Yards, findings and standing tables as files: the only package of the model that reads or writes anything.
 * <p>
 * Enter through {@link leat.document.YardFile} for files of yards, {@link leat.document.YardDocument} for their text,
 * {@link leat.document.FindingsDocument} for results, {@link leat.document.StandingData} for the tables of an edition. Whatever is wrong with a file is told
 * as a {@link leat.model.fault.LeatException} in the words of the yard; those of the libraries behind it never get out.
 */
@NullMarked
package leat.document;

import org.jspecify.annotations.NullMarked;
