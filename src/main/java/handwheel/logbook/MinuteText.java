package handwheel.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a board's minutes: one chain, every line signed for its place. */
public final class MinuteText {
  private MinuteText() {}

  /**
   * What the minutes say, and what is wrong with them. A line whose signature is not right is no
   * minute.
   *
   * @param minutes in the order of the file
   * @param lastH what the next line has to follow on
   * @param tornBytes how many bytes at the end belong to no line
   * @param problems everything that is wrong
   */
  public record Book(List<Minute> minutes, String lastH, int tornBytes, List<Problem> problems) {
    /**
     * Copies the lists.
     *
     * @param minutes in the order of the file
     * @param lastH what the next line has to follow on
     * @param tornBytes how many bytes at the end belong to no line
     * @param problems everything that is wrong
     */
    public Book {
      minutes = List.copyOf(minutes);
      problems = List.copyOf(problems);
    }
  }

  /**
   * Reads minutes.
   *
   * @param file the bytes of the file
   * @return what they say and what is wrong; never an exception
   */
  public static Book read(byte[] file) {
    FileLines lines = FileLines.of(file);
    ProblemList problems = new ProblemList();
    ChainCheck chain = new ChainCheck(problems);
    List<Minute> minutes = new ArrayList<>();
    for (int i = 0; i < lines.whole().size(); i++) {
      String before = chain.last();
      int number = i + 1;
      Optional<HashedLine> line = chain.next(number, lines.whole().get(i));
      line.flatMap(l -> minute(number, l, before, problems)).ifPresent(minutes::add);
    }
    lines.reportTorn(problems);
    return new Book(minutes, chain.last(), lines.tornBytes(), problems.kept());
  }

  private static Optional<Minute> minute(
      int number, HashedLine line, String before, ProblemList problems) {
    LineRead<Minute> read = Minute.read(line.bare());
    read.trouble().ifPresent(t -> problems.add(number, t));
    Optional<Minute> minute = read.value().filter(m -> m.isSignedAfter(before));
    if (read.value().isPresent() && minute.isEmpty()) {
      problems.add(
          number,
          Problem.Kind.SIGNATURE_WRONG,
          "the signature is not that of its key over this line at this place.");
    }
    return minute;
  }
}
