package handwheel.diagnostics;

/**
 * A place in a file.
 *
 * @param file the name the person gave
 * @param line from 1; 0 when the finding is about the whole file
 * @param column from 1, counted in code points; 0 when the finding is about the whole line
 */
public record SourceSpot(String file, int line, int column) implements Comparable<SourceSpot> {
  /**
   * Returns a place for a finding about a whole file.
   *
   * @param file the name the person gave
   * @return the place
   */
  public static SourceSpot wholeFile(String file) {
    return new SourceSpot(file, 0, 0);
  }

  @Override
  public int compareTo(SourceSpot other) {
    int byFile = file.compareTo(other.file);
    int byLine = byFile != 0 ? byFile : Integer.compare(line, other.line);
    return byLine != 0 ? byLine : Integer.compare(column, other.column);
  }

  /** Prints {@code file:line:column}, leaving out what is 0. */
  @Override
  public String toString() {
    if (line == 0) {
      return file;
    }
    return column == 0 ? file + ":" + line : file + ":" + line + ":" + column;
  }
}
