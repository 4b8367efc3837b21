/**
 * What a qualification board works with: the runs of a folder as a list, figures that say how
 * little they know, candidates' pages, decisions, papers.
 *
 * <p>This package never reads a clock, never changes a record, and never lets a figure stand
 * without its interval. A decision stands beside the machine's score, never over it. The index is a
 * copy: it can be thrown away and made again from the records.
 *
 * <p>Reading order: {@link handwheel.board.RunRow}, {@link handwheel.board.RunIndex}, {@link
 * handwheel.board.Figure}, {@link handwheel.board.ItemFigures}, {@link handwheel.board.Ruling},
 * {@link handwheel.board.Candidate}, {@link handwheel.board.BoardPack}.
 */
@org.jspecify.annotations.NullMarked
package handwheel.board;
