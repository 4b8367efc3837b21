package handwheel.logbook;

import java.util.List;

/**
 * The last line of a record. Its {@code h} follows on that of the score.
 *
 * @param why how the run came to its end, such as {@code over}
 * @param coached help that was given to the trainee while he drilled; empty if none was noted
 * @param about the {@code h} of the about line
 */
public record End(String why, String coached, String about) {
  /** How every end line begins. */
  static final String PREFIX = "{\"k\":\"end\"";

  private static final LineCodec<End> CODEC =
      new LineCodec<>(
          List.of(
              new LineForm<>(
                  "end",
                  End.class,
                  (o, e) -> o.text("why", e.why).text("coached", e.coached).text("about", e.about),
                  i -> new End(i.text("why"), i.text("coached"), i.text("about")))),
          e -> "end");

  /**
   * Writes the line without {@code h}.
   *
   * @return one line without end of line
   */
  public String line() {
    return CODEC.write(this);
  }

  static LineRead<End> read(String line) {
    return CODEC.read(line);
  }
}
