package handwheel.logbook;

import java.util.List;

/**
 * The line behind the end of a signed record. The key it belongs to stands in the about line, so
 * that a signature taken away shows.
 *
 * @param sig Ed25519 signature over {@link #message}, 128 lower-case hex digits
 */
public record Signed(String sig) {
  /** How every signature line begins. */
  static final String PREFIX = "{\"k\":\"signed\"";

  private static final LineCodec<Signed> CODEC =
      new LineCodec<>(
          List.of(
              new LineForm<>(
                  "signed",
                  Signed.class,
                  (o, s) -> o.text("sig", s.sig),
                  i -> new Signed(i.text("sig")))),
          s -> "signed");

  /**
   * Says what is signed for a record.
   *
   * @param endH the {@code h} of the end line, which binds every line above it
   * @return the text whose UTF-8 bytes are signed
   */
  public static String message(String endH) {
    return "handwheel record 1\n" + endH;
  }

  /**
   * Writes the line without {@code h}.
   *
   * @return one line without end of line
   */
  public String line() {
    return CODEC.write(this);
  }

  static LineRead<Signed> read(String line) {
    return CODEC.read(line);
  }
}
