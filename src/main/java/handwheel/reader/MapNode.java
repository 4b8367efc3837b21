package handwheel.reader;

import handwheel.diagnostics.NearestWords;
import handwheel.diagnostics.SourceSpot;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A mapping read by its shape. Keys the shape does not know and required keys that are missing are
 * reported when it is made; values are read one by one after that.
 */
final class MapNode {
  private static final Pattern NO_BLANK = Pattern.compile("([a-z-]+):(\\S.*)");

  private final Shape shape;
  private final SourceSpot spot;
  private final Findings findings;
  private final Map<String, YamlNode> values = new TreeMap<>();

  /** Keys that were meant, as far as one can tell from the misspelt ones. */
  private final TreeSet<String> meant = new TreeSet<>();

  private MapNode(Shape shape, SourceSpot spot, Findings findings) {
    this.shape = shape;
    this.spot = spot;
    this.findings = findings;
  }

  /** Takes a node as a mapping of a shape; empty if it is none. */
  static Optional<MapNode> of(YamlNode node, Shape shape, Findings findings) {
    if (node instanceof YamlNode.Mapping mapping) {
      MapNode map = new MapNode(shape, node.spot(), findings);
      mapping.entries().forEach(e -> map.take(e, mapping.isFlow()));
      map.reportMissing();
      return Optional.of(map);
    }
    Scalars.wrongForm(node, shape.what() + " with its keys", findings);
    return Optional.empty();
  }

  /** Returns a reader that takes a node as a mapping of this shape and reads that. */
  static <T> NodeReader<T> reader(Shape shape, MapReader<T> reader) {
    return (node, findings) -> of(node, shape, findings).flatMap(reader::read);
  }

  /**
   * Reads a mapping.
   *
   * @param <T> what comes of it
   */
  @FunctionalInterface
  interface MapReader<T> {
    /** Returns what the mapping says; empty after a finding. */
    Optional<T> read(MapNode map);
  }

  SourceSpot spot() {
    return spot;
  }

  Findings findings() {
    return findings;
  }

  boolean has(String key) {
    return node(key).isPresent();
  }

  /** Returns the node under a key of the shape. */
  Optional<YamlNode> node(String key) {
    declared(key);
    return Optional.ofNullable(values.get(key));
  }

  /** Reads the value under a key; what is there and cannot be read counts as lost. */
  <T> Optional<T> get(String key, NodeReader<T> reader) {
    Optional<YamlNode> node = node(key);
    Optional<T> value = node.flatMap(n -> reader.read(n, findings));
    if (node.isPresent() && value.isEmpty()) {
      findings.lose();
    }
    return value;
  }

  /** Reads one of the key's words, in lower case or as declared. */
  Optional<String> word(String key) {
    List<String> words = declared(key).words();
    return get(key, (n, f) -> Scalars.word(n, words, f));
  }

  /** Reads every item of the list under a key; items that cannot be read are left out and lost. */
  <T> List<T> list(String key, int most, NodeReader<T> reader) {
    return get(key, (n, f) -> Scalars.list(n, most, reader, f)).orElse(List.of());
  }

  /** Returns which of some keys are there, in the order given. */
  List<String> present(List<String> keys) {
    return keys.stream().filter(this::has).toList();
  }

  /** Returns the one key there of several; more or none is reported. */
  Optional<String> oneOf(List<String> keys) {
    List<String> there = present(keys);
    if (there.size() == 1) {
      return Optional.of(there.get(0));
    }
    findings.lose();
    if (there.size() > 1) {
      findings.add(
          FindingId.CONFLICTING_KEYS,
          spot,
          Say.quoted(there) + " exclude each other in " + shape.what(),
          "Keep one of them.");
    } else if (keys.stream().noneMatch(meant::contains)) {
      findings.add(
          FindingId.MISSING_KEY, spot, shape.what() + " needs one of " + Say.quoted(keys), "");
    }
    return Optional.empty();
  }

  private Key declared(String key) {
    return shape
        .key(key)
        .orElseThrow(() -> new IllegalArgumentException(shape.what() + " declares no " + key));
  }

  private void take(YamlNode.Entry entry, boolean isFlow) {
    if (shape.key(entry.key().text()).isPresent()) {
      values.put(entry.key().text(), entry.value());
    } else {
      reportUnknown(entry, isFlow, shape.what(), shape.names(), findings).ifPresent(meant::add);
    }
  }

  /** Reports an entry whose key is none of the valid ones; returns the key that was meant. */
  static Optional<String> reportUnknown(
      YamlNode.Entry entry, boolean isFlow, String what, List<String> valid, Findings findings) {
    YamlNode.Scalar key = entry.key();
    Matcher joined = NO_BLANK.matcher(key.text());
    boolean isBare = entry.value() instanceof YamlNode.Scalar v && v.isMissing();
    if (isBare && joined.matches() && valid.contains(joined.group(1))) {
      findings.add(
          FindingId.NO_BLANK_AFTER_COLON,
          key.spotAt(joined.start(2)),
          "no blank behind the colon of " + Say.quoted(key.text()),
          "Put a blank there.");
      return Optional.of(joined.group(1));
    }
    List<String> near = NearestWords.to(Say.shown(key.text()), valid);
    if (isBare && isFlow && near.isEmpty()) {
      findings.add(
          FindingId.COMMA_IN_TEXT,
          key.spot(),
          Say.quoted(key.text())
              + " stands alone behind a comma; a key with its value was expected",
          "A text with a comma needs double quotes; a decimal is written with a point.");
      return Optional.empty();
    }
    String mend = Say.offer(key.text(), valid);
    findings.add(
        FindingId.UNKNOWN_KEY,
        key.spot(),
        Say.quoted(key.text()) + " is no key of " + what,
        mend.isEmpty() ? "Its keys: " + Say.quoted(valid) + "." : mend);
    return near.stream().findFirst();
  }

  private void reportMissing() {
    for (Key key : shape.keys()) {
      boolean isThere = values.containsKey(key.name());
      if (!isThere && (key.isRequired() || meant.contains(key.name()))) {
        findings.lose();
      }
      if (key.isRequired() && !isThere && !meant.contains(key.name())) {
        findings.add(
            FindingId.MISSING_KEY,
            spot,
            shape.what() + " needs " + Say.quoted(key.name()) + ": " + key.meaning(),
            "");
      }
    }
  }
}
