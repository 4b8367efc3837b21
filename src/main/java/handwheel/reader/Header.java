package handwheel.reader;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The key that says what kind of file this is and for which version of the language. */
final class Header {
  static final String KEY = "handwheel";

  private static final List<String> KINDS = List.of("script", "ship", "plant", "condition");
  private static final String VERSION = "1";
  private static final Pattern TEXT = Pattern.compile("([a-z]+) ([0-9]{1,9})");

  private Header() {}

  /** Returns the key for a kind of file. */
  static Key key(String kind) {
    return Key.must(KEY, Form.HEADER, "`" + kind + " " + VERSION + "`")
        .with(List.of(kind + " " + VERSION));
  }

  /** Returns a reader that accepts only the header of a kind. */
  static NodeReader<String> of(String kind) {
    return (node, findings) ->
        Scalars.scalar(node, "`" + kind + " " + VERSION + "`", findings)
            .filter(s -> isRight(s, kind, findings))
            .map(YamlNode.Scalar::text);
  }

  private static boolean isRight(YamlNode.Scalar scalar, String kind, Findings findings) {
    String right = kind + " " + VERSION;
    Matcher m = TEXT.matcher(scalar.text());
    if (scalar.text().equals(right)) {
      return true;
    }
    if (m.matches() && m.group(1).equals(kind)) {
      findings.add(
          FindingId.UNKNOWN_VERSION,
          scalar.spot(),
          Say.quoted(scalar.text()) + " is another version; this program reads `" + right + "`",
          "A newer program may read it.");
      return false;
    }
    boolean isOther = m.matches() && KINDS.contains(m.group(1));
    findings.add(
        FindingId.WRONG_HEADER,
        scalar.spot(),
        Say.quoted(scalar.text()) + " stands here where `" + right + "` was expected",
        isOther ? "This is a file of another kind." : "");
    return false;
  }

  /**
   * Reads the root of a file as a mapping of a shape. In a file of another kind or version nothing
   * but that is found.
   */
  static Optional<MapNode> root(YamlNode root, Shape shape, String kind, Findings findings) {
    Optional<YamlNode> header = root.at(KEY);
    if (header.isPresent() && of(kind).read(header.get(), findings).isEmpty()) {
      findings.lose();
      return Optional.empty();
    }
    return MapNode.of(root, shape, findings);
  }
}
