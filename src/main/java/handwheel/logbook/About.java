package handwheel.logbook;

import java.io.IOException;
import java.util.List;

/**
 * The first line of a record: what is true of the run but does not fix it. It stands outside the
 * chain, so that two runs with the same inputs have the same digest; the {@link End} binds it.
 *
 * @param no number of the run in this installation, from 1; 0 where it could not be numbered
 * @param before digest of the run before in this installation; 64 zeros if there was none or it is
 *     not finished
 * @param trainee pseudonym
 * @param started wall clock at the start, ISO 8601 in UTC
 * @param keyed who keyed the orders
 * @param attests who attests that it was the trainee; may be empty
 * @param key public key under which the record will be signed, 64 hex digits; empty if it will not
 */
public record About(
    int no,
    String before,
    String trainee,
    String started,
    String keyed,
    String attests,
    String key) {
  private static final LineCodec<About> CODEC =
      new LineCodec<>(
          List.of(new LineForm<>("about", About.class, About::put, About::take)), a -> "about");

  /**
   * Writes the line without {@code h}.
   *
   * @return one line without end of line; its {@code h} follows on 64 zeros
   */
  public String line() {
    return CODEC.write(this);
  }

  static LineRead<About> read(String line) {
    return CODEC.read(line);
  }

  private static void put(FieldWriter out, About a) throws IOException {
    out.number("no", a.no)
        .text("before", a.before)
        .text("trainee", a.trainee)
        .text("started", a.started)
        .text("keyed", a.keyed)
        .text("attests", a.attests)
        .text("key", a.key);
  }

  private static About take(FieldReader in) throws IOException {
    return new About(
        in.count("no"),
        in.text("before"),
        in.text("trainee"),
        in.text("started"),
        in.text("keyed"),
        in.text("attests"),
        in.text("key"));
  }
}
