package handwheel.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads the values that carry no unit. What a value means is decided by what is wanted: {@code on},
 * {@code 010} or {@code 12:30} are texts where a text is wanted (YAML 1.1 had other ideas; see YAML
 * 1.2.2 section 10).
 */
final class Scalars {
  static final Pattern ID = Pattern.compile("[a-z][a-z0-9]*(?:-[a-z0-9]+)*");
  static final Pattern WHOLE = Pattern.compile("0|[1-9][0-9]{0,8}");
  static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,3})?");
  private static final Pattern LINE_END = Pattern.compile("\\s*\n\\s*");
  private static final List<String> OTHER_BOOLEANS =
      List.of("yes", "no", "on", "off", "y", "n", "1", "0");

  private Scalars() {}

  /** Takes a node as a single value; the wrong form and nothing at all are reported. */
  static Optional<YamlNode.Scalar> scalar(YamlNode node, String wanted, Findings findings) {
    if (!(node instanceof YamlNode.Scalar scalar)) {
      wrongForm(node, wanted, findings);
      return Optional.empty();
    }
    if (!scalar.isMissing()) {
      return Optional.of(scalar);
    }
    findings.add(
        FindingId.MISSING_VALUE,
        node.spot(),
        "nothing stands here where " + wanted + " was expected",
        "");
    return Optional.empty();
  }

  /** Reports a node that is no such thing as wanted. */
  static void wrongForm(YamlNode node, String wanted, Findings findings) {
    if (node instanceof YamlNode.Refused) {
      return;
    }
    boolean isMissing = node instanceof YamlNode.Scalar s && s.isMissing();
    findings.add(
        isMissing ? FindingId.MISSING_VALUE : FindingId.WRONG_FORM,
        node.spot(),
        (isMissing ? "nothing" : node.words()) + " stands here where " + wanted + " was expected",
        "");
  }

  /** Reads the items of a list. */
  static <T> Optional<List<T>> list(
      YamlNode node, int most, NodeReader<T> reader, Findings findings) {
    if (!(node instanceof YamlNode.Items)) {
      wrongForm(node, "a list", findings);
      return Optional.empty();
    }
    if (node.items().size() > most) {
      findings.add(
          FindingId.TOO_MANY,
          node.spot(),
          "the list has " + node.items().size() + " items; at most " + most + " are read",
          "Leave some out.");
      return Optional.empty();
    }
    List<T> read = new ArrayList<>();
    for (YamlNode item : node.items()) {
      Optional<T> value = reader.read(item, findings);
      value.ifPresentOrElse(read::add, findings::lose);
    }
    return Optional.of(List.copyOf(read));
  }

  /** Returns a reader of texts for people up to a length; several lines become one. */
  static NodeReader<String> text(int mostChars) {
    return (node, findings) ->
        scalar(node, "a text", findings).flatMap(s -> text(s, mostChars, findings));
  }

  private static Optional<String> text(YamlNode.Scalar scalar, int mostChars, Findings findings) {
    String text = LINE_END.matcher(scalar.text().strip()).replaceAll(" ");
    int chars = text.codePointCount(0, text.length());
    if (text.isEmpty()) {
      findings.add(
          FindingId.EMPTY_TEXT, scalar.spot(), "the text is empty", "Write what people must know.");
    } else if (chars > mostChars) {
      findings.add(
          FindingId.TEXT_TOO_LONG,
          scalar.spot(),
          "the text has " + chars + " characters; at most " + mostChars + " are read",
          "Shorten it.");
    }
    return text.isEmpty() || chars > mostChars ? Optional.empty() : Optional.of(text);
  }

  /** Reads an id. */
  static Optional<String> id(YamlNode node, Findings findings) {
    return scalar(node, "an id", findings)
        .filter(s -> isId(s, findings))
        .map(YamlNode.Scalar::text);
  }

  /** Returns whether a text is an id; otherwise it is reported. */
  static boolean isId(YamlNode.Scalar scalar, Findings findings) {
    return isId(scalar, scalar.text(), findings);
  }

  /** Returns whether a text, all or part of a scalar, is an id; otherwise it is reported. */
  static boolean isId(YamlNode.Scalar scalar, String text, Findings findings) {
    boolean isId = hasFormOfId(text);
    if (!isId) {
      String mended = asId(text);
      findings.add(
          text.contains(",") ? FindingId.COMMA_LIST : FindingId.BAD_ID,
          scalar.spot(),
          Say.quoted(text)
              + " is no id: lower-case letters, figures and single hyphens, a letter first, at most "
              + Limits.ID_CHARS,
          text.contains(",")
              ? "Several ids are a list: [one, two]."
              : mended.isEmpty() ? "" : "Write such as " + Say.quoted(mended) + ".");
    }
    return isId;
  }

  /** Returns whether a text is an id. */
  static boolean hasFormOfId(String text) {
    return text.length() <= Limits.ID_CHARS && ID.matcher(text).matches();
  }

  private static String asId(String text) {
    String mended = text.strip().toLowerCase(Locale.ROOT).replaceAll("[ _.]+", "-");
    return hasFormOfId(mended) ? mended : "";
  }

  /** Reads one id or a list of them, at least one, through a reader of one. */
  static NodeReader<List<String>> ids(NodeReader<String> one) {
    return (node, findings) -> {
      if (!(node instanceof YamlNode.Items)) {
        return one.read(node, findings).map(List::of);
      }
      if (node.items().isEmpty()) {
        findings.add(FindingId.EMPTY_LIST, node.spot(), "the list is empty", "Name at least one.");
        return Optional.empty();
      }
      return list(node, Limits.SCRIPT_ITEMS, one, findings);
    };
  }

  /** Reads one of a few words. */
  static Optional<String> word(YamlNode node, List<String> words, Findings findings) {
    return scalar(node, "one of " + Say.quoted(words), findings)
        .flatMap(
            s -> {
              if (words.contains(s.text())) {
                return Optional.of(s.text());
              }
              findings.add(
                  FindingId.UNKNOWN_WORD,
                  s.spot(),
                  Say.quoted(s.text())
                      + " stands here where one of "
                      + Say.quoted(words)
                      + " was expected",
                  nearWord(s.text(), words));
              return Optional.empty();
            });
  }

  private static String nearWord(String text, List<String> words) {
    String offer = Say.offer(text, words);
    return offer.startsWith("Valid") ? "" : offer;
  }

  /** Reads {@code true} or {@code false}. */
  static Optional<Boolean> trueOrFalse(YamlNode node, Findings findings) {
    Optional<YamlNode.Scalar> scalar = scalar(node, "`true` or `false`", findings);
    String text = scalar.map(YamlNode.Scalar::text).orElse("");
    if (scalar.isEmpty() || text.equals("true") || text.equals("false")) {
      return scalar.map(s -> s.text().equals("true"));
    }
    boolean isOther = OTHER_BOOLEANS.contains(text.toLowerCase(Locale.ROOT));
    findings.add(
        FindingId.NOT_TRUE_OR_FALSE,
        node.spot(),
        Say.quoted(text) + " stands here where `true` or `false` was expected",
        isOther ? "`yes`, `on` and their like are plain words here." : "");
    return Optional.empty();
  }

  /** Returns a reader of whole numbers between two ends. */
  static NodeReader<Integer> whole(int least, int most) {
    return (node, findings) ->
        scalar(node, "a whole number", findings)
            .flatMap(s -> whole(s, s.text(), least, most, findings));
  }

  /** Reads {@code text}, which is all or part of a scalar, as a whole number. */
  static Optional<Integer> whole(
      YamlNode.Scalar scalar, String text, int least, int most, Findings findings) {
    if (!WHOLE.matcher(text).matches()) {
      findings.add(
          FindingId.NOT_A_WHOLE_NUMBER,
          scalar.spot(),
          Say.quoted(scalar.text()) + " stands here where a whole number was expected",
          "Write figures only, no sign, no blank, no 0 in front.");
      return Optional.empty();
    }
    int value = Integer.parseInt(text);
    return isInside(value, least, most, scalar, findings) ? Optional.of(value) : Optional.empty();
  }

  /** Reads a bare number; an exponent may follow. */
  static Optional<Double> number(YamlNode node, Findings findings) {
    return scalar(node, "a number", findings).flatMap(s -> number(s, findings));
  }

  /** Returns a reader of bare numbers between two ends. */
  static NodeReader<Double> number(int least, int most) {
    return (node, findings) ->
        scalar(node, "a number", findings)
            .flatMap(s -> number(s, findings).filter(v -> isInside(v, least, most, s, findings)));
  }

  private static boolean isInside(
      double value, int least, int most, YamlNode.Scalar scalar, Findings findings) {
    boolean isInside = value >= least && value <= most;
    if (!isInside) {
      findings.add(
          FindingId.OUT_OF_RANGE,
          scalar.spot(),
          Say.quoted(scalar.text()) + " is outside " + least + " to " + most,
          "");
    }
    return isInside;
  }

  private static Optional<Double> number(YamlNode.Scalar scalar, Findings findings) {
    if (!isNumber(scalar.text())) {
      findings.add(
          FindingId.NOT_A_NUMBER,
          scalar.spot(),
          Say.quoted(scalar.text()) + " stands here where a number was expected",
          "Write such as 0.5, with a point.");
      return Optional.empty();
    }
    double value = Double.parseDouble(scalar.text());
    if (Math.abs(value) > Limits.FIGURE) {
      findings.add(
          FindingId.OUT_OF_RANGE,
          scalar.spot(),
          Say.quoted(scalar.text()) + " is larger than any figure here",
          "");
      return Optional.empty();
    }
    return Optional.of(value);
  }

  /** Returns whether a text is a bare number. */
  static boolean isNumber(String text) {
    return text.length() <= Limits.NAME_CHARS && NUMBER.matcher(text).matches();
  }
}
