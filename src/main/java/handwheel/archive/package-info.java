/**
 * Record files and the ledger of an installation: what a run's lines become on disk. An act that
 * was taken is on the disk when the call returns, and a run that was broken off reads back whole up
 * to its last line.
 *
 * <p>This package never changes a byte that stands in a record, never gives a run's number twice,
 * and never stops a run because of a disk: what goes wrong is told by {@code trouble()}. It knows
 * nothing of what the lines mean.
 *
 * <p>Reading order: {@link handwheel.archive.RecordFile}, {@link handwheel.archive.Ledger}, {@link
 * handwheel.archive.Numbering}, {@link handwheel.archive.RecordName}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.archive;
