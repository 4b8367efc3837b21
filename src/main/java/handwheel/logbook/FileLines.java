package handwheel.logbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A file's bytes cut at each line feed. Only a line that has its line feed counts as written.
 *
 * @param whole the lines, without line feeds
 * @param tornBytes how many bytes stand after the last line feed
 */
record FileLines(List<byte[]> whole, int tornBytes) {
  static FileLines of(byte[] file) {
    List<byte[]> lines = new ArrayList<>();
    int start = 0;
    for (int i = 0; i < file.length; i++) {
      if (file[i] == '\n') {
        lines.add(Arrays.copyOfRange(file, start, i));
        start = i + 1;
      }
    }
    return new FileLines(lines, file.length - start);
  }

  /** Reports bytes that are no line. */
  void reportTorn(ProblemList problems) {
    if (tornBytes > 0) {
      problems.add(
          whole.size() + 1,
          Problem.Kind.TORN,
          "the last line is torn: its "
              + tornBytes
              + " bytes have no end of line and do not count.");
    }
  }
}
