package handwheel.screen;

import java.util.ArrayList;
import java.util.List;

/** A frame as text for golden files: its rows, then where it is not plain. */
public final class FrameText {
  private FrameText() {}

  /** Returns rows without blanks at their ends, and one line for each styled piece. */
  public static String of(Frame frame) {
    List<String> lines = new ArrayList<>();
    frame.rows().forEach(r -> lines.add(r.text().stripTrailing()));
    lines.add("cursor " + frame.cursorColumn());
    for (int row = 0; row < frame.rows().size(); row++) {
      int column = 0;
      for (Frame.Span span : frame.rows().get(row).spans()) {
        if (span.style() != Frame.Style.PLAIN) {
          int last = column + span.text().length() - 1;
          lines.add("row " + row + " columns " + column + "-" + last + " " + span.style());
        }
        column += span.text().length();
      }
    }
    return String.join("\n", lines) + "\n";
  }
}
