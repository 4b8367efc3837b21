package handwheel.logbook;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a record file says, and what is wrong with it. Lines and end reach only as far as the chain
 * holds: nothing behind the first line that does not hold is used.
 */
public final class RunRecord {
  private final @Nullable About about;
  private final List<ChainedLine> lines;
  private final Closing closing;
  private final int unusedLines;
  private final List<Problem> problems;

  RunRecord(
      @Nullable About about,
      List<ChainedLine> lines,
      Closing closing,
      int unusedLines,
      List<Problem> problems) {
    this.about = about;
    this.lines = List.copyOf(lines);
    this.closing = closing;
    this.unusedLines = unusedLines;
    this.problems = List.copyOf(problems);
  }

  /**
   * Stands for a record that could not be read at all.
   *
   * @param message why, for a person
   * @return a record without lines and with one problem
   */
  public static RunRecord unreadable(String message) {
    Problem problem = new Problem(0, 0, Problem.Kind.UNREADABLE, message);
    return new RunRecord(null, List.of(), Closing.NONE, 0, List.of(problem));
  }

  /**
   * Returns the about line.
   *
   * @return what it says, or empty if it does not hold
   */
  public Optional<About> about() {
    return Optional.ofNullable(about);
  }

  /**
   * Returns the lines from {@code run} on, as far as the chain holds.
   *
   * @return the lines, without about and end
   */
  public List<ChainedLine> lines() {
    return lines;
  }

  /**
   * Returns the entries from {@code run} on, as far as the chain holds.
   *
   * @return the entries of {@link #lines()}
   */
  public List<Entry> entries() {
    return lines.stream().map(ChainedLine::entry).toList();
  }

  /**
   * Returns the end line.
   *
   * @return what it says, or empty if there is none or the chain does not hold up to it
   */
  public Optional<End> end() {
    return Optional.ofNullable(closing.end());
  }

  /**
   * Returns the {@code h} of the end line, which binds the whole record but its signature.
   *
   * @return 64 lower-case hex digits, or empty if there is no end that holds
   */
  public Optional<String> endH() {
    return Optional.ofNullable(closing.endH());
  }

  /**
   * Returns the signature.
   *
   * @return a signature that is right for the key of the about line, or empty
   */
  public Optional<Signed> signed() {
    return Optional.ofNullable(closing.signed());
  }

  /**
   * Returns the digest of the run: the {@code h} of its score.
   *
   * @return 64 lower-case hex digits, or empty if the chain does not hold up to a score
   */
  public Optional<String> digest() {
    return lines.stream()
        .filter(l -> l.entry() instanceof Entry.Score)
        .map(ChainedLine::h)
        .findFirst();
  }

  /**
   * Returns how many whole lines are not used because the chain does not hold up to them.
   *
   * @return 0 or more; a torn last line does not count
   */
  public int unusedLines() {
    return unusedLines;
  }

  /**
   * Returns everything that is wrong.
   *
   * @return in the order of the file; at most the first 50
   */
  public List<Problem> problems() {
    return problems;
  }

  /**
   * Returns whether the record is whole, finished and unchanged since it was written.
   *
   * @return true if there are no problems
   */
  public boolean holds() {
    return problems.isEmpty();
  }

  /**
   * Returns whether nothing worse happened than that the run was broken off.
   *
   * @return true if all problems are a missing end or a torn last line
   */
  public boolean isOnlyUnfinished() {
    return !problems.isEmpty() && problems.stream().allMatch(RunRecord::isCut);
  }

  private static boolean isCut(Problem problem) {
    return problem.kind() == Problem.Kind.UNFINISHED || problem.kind() == Problem.Kind.TORN;
  }
}
