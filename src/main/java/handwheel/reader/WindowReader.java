package handwheel.reader;

import handwheel.casualty.Window;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads times allowed from a cue on: {@code 15 s of cue roar}. */
final class WindowReader implements NodeReader<Window> {
  static final Pattern TEXT = Pattern.compile("(.+?) +of +cue +(\\S+)");

  private final Scope scope;

  WindowReader(Scope scope) {
    this.scope = scope;
  }

  @Override
  public Optional<Window> read(YamlNode node, Findings findings) {
    return Scalars.scalar(node, "a time of a cue", findings).flatMap(s -> window(s, findings));
  }

  private Optional<Window> window(YamlNode.Scalar scalar, Findings findings) {
    Matcher m = TEXT.matcher(scalar.text());
    if (scalar.text().length() > Limits.ORDER_CHARS || !m.matches()) {
      findings.add(
          FindingId.NOT_A_WINDOW,
          scalar.spot(),
          Say.quoted(scalar.text()) + " does not say how long after which cue",
          "Write such as `15 s of cue roar`.");
      return Optional.empty();
    }
    YamlNode.Scalar time =
        new YamlNode.Scalar(
            m.group(1), scalar.isQuoted(), scalar.textSpot(), scalar.isOneLine(), scalar.spot());
    Optional<Long> ticks = Measures.ticks(time, 1, findings);
    boolean isKnown = scope.names().isKnown(Named.CUE, scalar, m.group(2), findings);
    ticks.filter(t -> t > scope.limitTicks()).ifPresent(t -> pastLimit(scalar, findings));
    return isKnown ? ticks.map(t -> new Window(t, m.group(2))) : Optional.empty();
  }

  private static void pastLimit(YamlNode.Scalar scalar, Findings findings) {
    findings.add(
        FindingId.WINDOW_PAST_LIMIT,
        scalar.spot(),
        Say.quoted(scalar.text()) + " runs on past the drill's `limit`",
        "Shorten it, or raise the limit.");
  }
}
