package handwheel.reader;

import handwheel.casualty.Window;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads times allowed from a cue, a phase or another step on: {@code 15 s of cue roar}, {@code 30 s
 * of phase fog}, {@code 20 s of step main-stop}.
 */
final class WindowReader implements NodeReader<Window> {
  static final Pattern TEXT = Pattern.compile("(.+?) +of +(cue|phase|step) +(\\S+)");

  private final Scope scope;

  WindowReader(Scope scope) {
    this.scope = scope;
  }

  @Override
  public Optional<Window> read(YamlNode node, Findings findings) {
    return Scalars.scalar(node, "a time of a cue, a phase or a step", findings)
        .flatMap(s -> window(s, findings));
  }

  private Optional<Window> window(YamlNode.Scalar scalar, Findings findings) {
    Matcher m = TEXT.matcher(scalar.text());
    if (scalar.text().length() > Limits.ORDER_CHARS || !m.matches()) {
      findings.add(
          FindingId.NOT_A_WINDOW,
          scalar.spot(),
          Say.quoted(scalar.text()) + " does not say how long after which cue, phase or step",
          "Write such as `15 s of cue roar`.");
      return Optional.empty();
    }
    YamlNode.Scalar time =
        new YamlNode.Scalar(
            m.group(1), scalar.isQuoted(), scalar.textSpot(), scalar.isOneLine(), scalar.spot());
    Optional<Long> ticks = Measures.ticks(time, 1, findings);
    Window.Since since = Window.Since.valueOf(m.group(2).toUpperCase(Locale.ROOT));
    boolean isKnown = scope.names().isKnown(named(since), scalar, m.group(3), findings);
    ticks.filter(t -> t > scope.limitTicks()).ifPresent(t -> pastLimit(scalar, findings));
    return isKnown ? ticks.map(t -> new Window(t, since, m.group(3))) : Optional.empty();
  }

  private static Named named(Window.Since since) {
    return switch (since) {
      case CUE -> Named.CUE;
      case PHASE -> Named.PHASE;
      case STEP -> Named.STEP;
    };
  }

  private static void pastLimit(YamlNode.Scalar scalar, Findings findings) {
    findings.add(
        FindingId.WINDOW_PAST_LIMIT,
        scalar.spot(),
        Say.quoted(scalar.text()) + " runs on past the drill's `limit`",
        "Shorten it, or raise the limit.");
  }
}
