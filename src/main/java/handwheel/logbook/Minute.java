package handwheel.logbook;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One line of a board's minutes: a mark, a decision and the like. Minutes are appended and signed,
 * and never changed; who changes his mind adds a line.
 *
 * @param kind what was done, one of {@link #KINDS}
 * @param at wall clock, ISO 8601 in UTC
 * @param by pseudonym of who did it
 * @param key his public key, 64 hex digits
 * @param of what it is about: the root of a run or the pseudonym of a person
 * @param facts what is said, in a fixed order
 * @param sig signature over {@link #message}, 128 hex digits
 */
public record Minute(
    String kind, String at, String by, String key, String of, List<Fact> facts, String sig) {
  /**
   * An assessor marked a run; the machine's score of it was shown to him; a supervisor made a
   * statement; an oral question was put; a qualifier was named; the board decided.
   */
  public static final List<String> KINDS =
      List.of("marked", "shown", "stated", "asked", "named", "decided");

  private static final LineCodec<Minute> CODEC =
      new LineCodec<>(
          KINDS.stream().<LineForm<? extends Minute>>map(Minute::form).toList(), Minute::kind);

  /**
   * One thing that is said.
   *
   * @param name such as {@code reason}
   * @param is its text
   */
  public record Fact(String name, String is) {}

  /**
   * Copies the list.
   *
   * @param kind what was done, one of {@link #KINDS}
   * @param at wall clock, ISO 8601 in UTC
   * @param by pseudonym of who did it
   * @param key his public key, 64 hex digits
   * @param of what it is about
   * @param facts what is said, in a fixed order
   * @param sig signature, 128 hex digits
   */
  public Minute {
    facts = List.copyOf(facts);
  }

  /**
   * Returns a fact.
   *
   * @param name its name
   * @return its text; empty if it is not said
   */
  public String fact(String name) {
    Stream<Fact> named = facts.stream().filter(f -> f.name().equals(name));
    return named.findFirst().map(Fact::is).orElse("");
  }

  /**
   * Signs the line for its place.
   *
   * @param previousH the {@code h} of the line before, so that it fits no other place
   * @param signer whose key it names
   * @return the line with its signature
   */
  public Minute signed(String previousH, Signer signer) {
    Minute named = new Minute(kind, at, by, signer.publicHex(), of, facts, "");
    String message = named.message(previousH);
    return new Minute(kind, at, by, signer.publicHex(), of, facts, signer.sign(message));
  }

  boolean isSignedAfter(String previousH) {
    return PublicKeys.verifies(key, message(previousH), sig);
  }

  private String message(String previousH) {
    Minute bare = new Minute(kind, at, by, key, of, facts, "");
    return "handwheel minute 1\n" + previousH + "\n" + bare.line();
  }

  /**
   * Writes the line without {@code h}.
   *
   * @return one line without end of line
   */
  public String line() {
    return CODEC.write(this);
  }

  static LineRead<Minute> read(String line) {
    return CODEC.read(line);
  }

  private static LineForm<Minute> form(String kind) {
    return new LineForm<>(
        kind,
        Minute.class,
        (o, m) ->
            o.text("at", m.at)
                .text("by", m.by)
                .text("key", m.key)
                .text("of", m.of)
                .list(
                    "facts",
                    m.facts,
                    (f, fact) -> f.text("name", fact.name()).text("is", fact.is()))
                .text("sig", m.sig),
        i ->
            new Minute(
                kind,
                i.text("at"),
                i.text("by"),
                i.text("key"),
                i.text("of"),
                i.list("facts", f -> new Fact(f.text("name"), f.text("is"))),
                i.text("sig")));
  }

  /**
   * Returns the last of some minutes.
   *
   * @param minutes in the order of the file
   * @return the last, or empty
   */
  public static Optional<Minute> last(Stream<Minute> minutes) {
    return minutes.reduce((a, b) -> b);
  }
}
