package handwheel.reader;

import handwheel.diagnostics.SourceSpot;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Composes the text of a file to a tree of nodes from SnakeYAML's events, which still know where an
 * alias stands. No tag is ever resolved. Anchors, aliases, tags, keys that are no text, keys given
 * twice and second documents are refused.
 */
final class YamlText {
  private static final String CORE_TAG = "tag:yaml.org,2002:";
  private static final List<String> CORE =
      List.of("str", "int", "float", "bool", "null", "seq", "map");
  private static final int REPLACEMENT = 0xFFFD;
  private static final String CURLY_QUOTES = "“”„«»‘’‚";

  private final String file;
  private final Findings findings;
  private final ParserImpl parser;
  private final Deque<SourceSpot> brackets = new ArrayDeque<>();
  private SourceSpot last;

  /** The text just read, if its quotes close in a later line than they open. */
  private Optional<SyntaxFault.LongQuote> longQuote = Optional.empty();

  private YamlText(String file, SourceText source, Findings findings) {
    this.file = file;
    this.findings = findings;
    this.last = new SourceSpot(file, 1, 1);
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Limits.FILE_BYTES + 1);
    this.parser = new ParserImpl(new StreamReader(source.text()), options);
  }

  /**
   * Composes a file.
   *
   * @param file its name for people
   * @param bytes its content
   * @param findings receives what is wrong
   * @return the tree, or empty if there is none
   */
  static Optional<YamlNode> compose(String file, byte[] bytes, Findings findings) {
    return SourceText.of(file, bytes, findings).flatMap(s -> compose(file, s, findings));
  }

  // SnakeYAML lets stray exceptions of the platform through, for example for an escape that is no
  // character. They are the author's mistakes all the same.
  private static Optional<YamlNode> compose(String file, SourceText source, Findings findings) {
    YamlText yaml = new YamlText(file, source, findings);
    try {
      return yaml.document();
    } catch (TooDeep e) {
      findings.add(
          FindingId.TOO_DEEP,
          yaml.last,
          "lists and mappings lie more than " + Limits.DEPTH + " deep here",
          "A bracket too many? No file needs that depth.");
    } catch (MarkedYAMLException e) {
      new SyntaxFault(file, source, findings).report(e, yaml.innermostBracket(), yaml.longQuote);
    } catch (RuntimeException e) {
      findings.add(
          FindingId.SYNTAX, yaml.last, "something behind this place is no YAML", SyntaxFault.MEND);
    }
    return Optional.empty();
  }

  private Optional<YamlNode> document() throws TooDeep {
    next();
    if (parser.checkEvent(Event.ID.StreamEnd)) {
      findings.add(
          FindingId.EMPTY_FILE,
          SourceSpot.wholeFile(file),
          "the file holds nothing but blanks and comments",
          "");
      return Optional.empty();
    }
    next();
    YamlNode root = node(1);
    next();
    if (!parser.checkEvent(Event.ID.StreamEnd)) {
      findings.add(
          FindingId.SECOND_DOCUMENT,
          spot(parser.peekEvent().getStartMark()),
          "a second document starts here",
          "Keep one document in a file; take the line `---` or `...` out.");
      return Optional.empty();
    }
    return Optional.of(root);
  }

  private Event next() {
    Event event = parser.getEvent();
    last = spot(event.getStartMark());
    return event;
  }

  private YamlNode node(int depth) throws TooDeep {
    Event event = next();
    if (event instanceof AliasEvent alias) {
      refuseAnchor(last, "*" + alias.getAnchor());
      return new YamlNode.Refused(last);
    }
    refuseAnchorAndTag((NodeEvent) event);
    if (event instanceof ScalarEvent scalar) {
      return scalar(scalar);
    }
    if (depth > Limits.DEPTH) {
      throw new TooDeep();
    }
    return collection((CollectionStartEvent) event, depth);
  }

  private YamlNode collection(CollectionStartEvent event, int depth) throws TooDeep {
    if (event.isFlow()) {
      brackets.push(last);
    }
    YamlNode node =
        event instanceof SequenceStartEvent ? items(depth) : mapping(event.isFlow(), depth);
    if (event.isFlow()) {
      brackets.pop();
    }
    return node;
  }

  private Optional<SourceSpot> innermostBracket() {
    return Optional.ofNullable(brackets.peek());
  }

  private YamlNode items(int depth) throws TooDeep {
    SourceSpot spot = last;
    List<YamlNode> items = new ArrayList<>();
    while (!parser.checkEvent(Event.ID.SequenceEnd)) {
      items.add(node(depth + 1));
    }
    next();
    return new YamlNode.Items(items, spot);
  }

  private YamlNode mapping(boolean isFlow, int depth) throws TooDeep {
    SourceSpot spot = last;
    List<YamlNode.Entry> entries = new ArrayList<>();
    Map<String, SourceSpot> seen = new TreeMap<>();
    while (!parser.checkEvent(Event.ID.MappingEnd)) {
      YamlNode key = node(depth + 1);
      YamlNode value = node(depth + 1);
      if (key instanceof YamlNode.Scalar text && isNew(text, seen)) {
        entries.add(new YamlNode.Entry(text, value));
      } else if (key instanceof YamlNode.Items || key instanceof YamlNode.Mapping) {
        findings.add(
            FindingId.KEY_NOT_TEXT,
            key.spot(),
            key.words() + " stands where a key was expected",
            "A text with brackets or braces needs double quotes.");
      }
    }
    next();
    return new YamlNode.Mapping(entries, isFlow, spot);
  }

  private boolean isNew(YamlNode.Scalar key, Map<String, SourceSpot> seen) {
    SourceSpot before = seen.putIfAbsent(key.text(), key.spot());
    if (before != null) {
      findings.add(
          FindingId.DUPLICATE_KEY,
          key.spot(),
          Say.quoted(key.text())
              + " stands twice, here and in line "
              + before.line()
              + ", column "
              + before.column(),
          "Keep one of the two.");
      findings.lose();
    }
    return before == null;
  }

  private YamlNode.Scalar scalar(ScalarEvent event) {
    DumperOptions.ScalarStyle style = event.getScalarStyle();
    boolean isPlain = style == DumperOptions.ScalarStyle.PLAIN;
    boolean isInQuotes =
        style == DumperOptions.ScalarStyle.DOUBLE_QUOTED
            || style == DumperOptions.ScalarStyle.SINGLE_QUOTED;
    Mark end = event.getEndMark();
    boolean isOneLine = (isPlain || isInQuotes) && end.getLine() == event.getStartMark().getLine();
    longQuote =
        isInQuotes && !isOneLine
            ? Optional.of(new SyntaxFault.LongQuote(last, end.getLine() + 1))
            : Optional.empty();
    String text = withoutRefused(event.getValue());
    if (isPlain && isCurly(text, 0)) {
      findings.add(
          FindingId.CURLY_QUOTE,
          last,
          Say.quoted(text) + " stands in typeset quotes, which are letters to YAML",
          "Use the straight quote \".");
      return new YamlNode.Scalar(uncurled(text), true, right(last), isOneLine, last);
    }
    return new YamlNode.Scalar(text, !isPlain, isInQuotes ? right(last) : last, isOneLine, last);
  }

  /** An escape may bring in what {@link CharacterScan} keeps out; it goes no further. */
  private String withoutRefused(String text) {
    OptionalInt refused = text.codePoints().filter(YamlText::isRefused).findFirst();
    if (refused.isEmpty()) {
      return text;
    }
    findings.add(
        FindingId.CONTROL_CHARACTER,
        last,
        "an escape in this text makes " + CharacterScan.name(refused.getAsInt()),
        "Delete it; write \\\\ for a backslash.");
    findings.lose();
    StringBuilder clean = new StringBuilder();
    text.codePoints().forEach(c -> clean.appendCodePoint(isRefused(c) ? REPLACEMENT : c));
    return clean.toString();
  }

  private static boolean isRefused(int c) {
    return c != '\n' && CharacterScan.isRefused(c);
  }

  private static String uncurled(String text) {
    String behind = text.substring(1);
    int end = behind.length() - 1;
    return isCurly(behind, end) ? behind.substring(0, end) : behind;
  }

  private static boolean isCurly(String text, int index) {
    return text.length() > index && index >= 0 && CURLY_QUOTES.indexOf(text.charAt(index)) >= 0;
  }

  private static SourceSpot right(SourceSpot spot) {
    return new SourceSpot(spot.file(), spot.line(), spot.column() + 1);
  }

  private void refuseAnchorAndTag(NodeEvent event) {
    if (event.getAnchor() != null) {
      refuseAnchor(last, "&" + event.getAnchor());
    }
    String tag = event instanceof ScalarEvent s ? s.getTag() : collectionTag(event);
    if (tag != null && !isCore(tag)) {
      findings.add(
          FindingId.TAG,
          last,
          "the tag " + Say.quoted(tag) + " stands here; tags are not used",
          "A text that starts with `!` needs double quotes.");
    }
  }

  private static @org.jspecify.annotations.Nullable String collectionTag(NodeEvent event) {
    return event instanceof CollectionStartEvent c ? c.getTag() : null;
  }

  private static boolean isCore(String tag) {
    return tag.startsWith(CORE_TAG) && CORE.contains(tag.substring(CORE_TAG.length()));
  }

  private void refuseAnchor(SourceSpot spot, String sign) {
    findings.add(
        FindingId.ANCHOR,
        spot,
        Say.quoted(sign) + " stands here; anchors and aliases are not used",
        "Write the part out again. A text that starts with `&` or `*` needs double quotes.");
  }

  private SourceSpot spot(Mark mark) {
    return spot(file, mark);
  }

  /** Returns SnakeYAML's place, which counts from 0, as ours. */
  static SourceSpot spot(String file, Mark mark) {
    return new SourceSpot(file, mark.getLine() + 1, mark.getColumn() + 1);
  }

  /** The tree is deeper than the limit; never leaves this class. */
  private static final class TooDeep extends Exception {
    private static final long serialVersionUID = 1L;

    TooDeep() {
      super("too deep", null, false, false);
    }
  }
}
