package handwheel.reader;

import handwheel.casualty.Window;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads times allowed: {@code TIME of cue ID}. */
final class Windows {
  private static final Pattern WINDOW = Pattern.compile("(.+?) +of +cue +(\\S+)");

  private Windows() {}

  static Optional<Window> read(YamlNode node, List<String> cues, Findings findings) {
    Optional<YamlNode.Scalar> scalar = Scalars.scalar(node, "`TIME of cue ID`", findings);
    if (scalar.isEmpty()) {
      return Optional.empty();
    }
    Matcher m = WINDOW.matcher(scalar.get().text());
    if (!m.matches()) {
      findings.add(
          FindingId.NOT_A_WINDOW,
          node.spot(),
          Say.quoted(scalar.get().text()) + " stands here where `TIME of cue ID` was expected",
          "Write such as `15 s of cue " + (cues.isEmpty() ? "roar" : cues.get(0)) + "`.");
      return Optional.empty();
    }
    Optional<Long> ticks = Measures.ticks(1).read(part(scalar.get(), m.group(1), 0), findings);
    Optional<String> cue =
        Names.of("a cue", cues).read(part(scalar.get(), m.group(2), m.start(2)), findings);
    return ticks.flatMap(t -> cue.map(c -> new Window(t, c)));
  }

  private static YamlNode part(YamlNode.Scalar whole, String text, int index) {
    return new YamlNode.Scalar(text, true, whole.spotAt(index), true, whole.spotAt(index));
  }
}
