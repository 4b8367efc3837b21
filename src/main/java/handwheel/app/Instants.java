package handwheel.app;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the option {@code --at}: seconds, or minutes:seconds, from the first cue. */
final class Instants {
  private static final Pattern TEXT = Pattern.compile("(-?)(?:(\\d{1,4}):)?(\\d{1,5}(?:\\.\\d)?)");

  private Instants() {}

  static Optional<Double> of(Arguments args) throws Usage {
    Optional<String> text = args.value("--at");
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher m = TEXT.matcher(text.get());
    if (!m.matches()) {
      throw new Usage(
          "`--at " + text.get() + "`: seconds from the first cue are needed, such as 41 or 0:41.");
    }
    double minutes = m.group(2) == null ? 0 : Double.parseDouble(m.group(2));
    double seconds = minutes * 60 + Double.parseDouble(m.group(3));
    return Optional.of(m.group(1).isEmpty() ? seconds : -seconds);
  }
}
