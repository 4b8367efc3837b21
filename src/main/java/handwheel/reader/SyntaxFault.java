package handwheel.reader;

import handwheel.diagnostics.SourceSpot;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Says what is wrong with a text that is no YAML. SnakeYAML often stumbles behind the mistake; this
 * class looks back for the line where it was made.
 */
final class SyntaxFault {
  static final String MEND = "Compare the line and the one before it with a line that works.";

  private static final Pattern NO_BLANK = Pattern.compile("\\s*(?:- +)?[A-Za-z_][\\w-]*:[^\\s/].*");
  private static final Pattern CURLY_VALUE = Pattern.compile(".*?[:\\[{,] +[“”„«»‘’‚].*");

  private final String file;
  private final SourceText source;
  private final Findings findings;

  SyntaxFault(String file, SourceText source, Findings findings) {
    this.file = file;
    this.source = source;
    this.findings = findings;
  }

  /**
   * Reports a fault.
   *
   * @param fault what SnakeYAML says
   * @param bracket where the innermost bracket or brace still open stands
   * @param quote the text just before, if it is quoted and has several lines
   */
  void report(MarkedYAMLException fault, Optional<SourceSpot> bracket, Optional<LongQuote> quote) {
    String problem = fault.getProblem();
    String context = fault.getContext() == null ? "" : fault.getContext();
    SourceSpot at = spot(fault.getProblemMark());
    SourceSpot from = fault.getContextMark() == null ? at : spot(fault.getContextMark());
    if (quote.filter(q -> q.endLine() == at.line()).isPresent()) {
      openQuote(quote.get().spot(), "is closed only in line " + at.line());
    } else if (problem.contains("values are not allowed here")) {
      unexpectedColon(at);
    } else if (context.contains("simple key")) {
      noColon(from);
    } else if (context.contains("flow") || problem.contains("<stream end>")) {
      bracket.ifPresentOrElse(b -> openBracket(b, at), () -> syntax(problem, at));
    } else if (problem.contains("<block end>")) {
      blockEnd(problem, at);
    } else {
      inScalar(problem, context, from, at);
    }
  }

  private void unexpectedColon(SourceSpot at) {
    String line = source.line(at.line());
    int before = before(line, at.column()).indexOf(": ");
    if (CURLY_VALUE.matcher(line).matches()) {
      curlyQuote(at, line);
    } else if (before >= 0) {
      findings.add(
          FindingId.COLON_IN_TEXT,
          at,
          "a colon with a blank behind it stands inside the text "
              + Say.quoted(line.substring(before + 2).strip()),
          "Put the whole text in double quotes.");
    } else {
      lineBefore(at);
    }
  }

  private void curlyQuote(SourceSpot at, String line) {
    if (findings.has(FindingId.CURLY_QUOTE, at.line())) {
      return;
    }
    findings.add(
        FindingId.CURLY_QUOTE,
        at,
        "typeset quotes in " + Say.quoted(line.strip()) + " are letters to YAML",
        "Use the straight quote \".");
  }

  /** A key stands where none can: the line above is no entry, or this one is indented too far. */
  private void lineBefore(SourceSpot at) {
    int above = lastLine(at.line() - 1);
    if (noBlank(above) || noBlank(at.line())) {
      return;
    }
    if (above > 0 && !source.line(above).contains(":")) {
      noColon(new SourceSpot(file, above, indent(source.line(above)) + 1));
    } else {
      indent(at, "this line is indented deeper than the one it belongs to");
    }
  }

  private void noColon(SourceSpot at) {
    if (noBlank(at.line()) || noBlank(lastLine(at.line() - 1))) {
      return;
    }
    String found = source.line(at.line()).strip();
    findings.add(
        FindingId.NO_COLON,
        at,
        Say.quoted(found) + " has no colon; a key with its value was expected",
        "Write `key: value`. If the line goes on with the text above it, put that in quotes.");
  }

  private boolean noBlank(int number) {
    String line = source.line(number);
    Matcher m = NO_BLANK.matcher(line);
    if (!m.matches()) {
      return false;
    }
    int colon = line.indexOf(':');
    findings.add(
        FindingId.NO_BLANK_AFTER_COLON,
        new SourceSpot(file, number, colon + 2),
        "no blank behind the colon of " + Say.quoted(line.strip()),
        "Put a blank there.");
    return true;
  }

  private void openBracket(SourceSpot bracket, SourceSpot at) {
    String sign = source.line(bracket.line()).substring(bracket.column() - 1, bracket.column());
    findings.add(
        FindingId.OPEN_BRACKET,
        bracket,
        "`"
            + sign
            + "` opens here and is not closed before line "
            + at.line()
            + ", column "
            + at.column(),
        "Close it, or look there for a missing comma or quote.");
  }

  private void blockEnd(String problem, SourceSpot at) {
    String line = source.line(at.line());
    String before = before(line, at.column()).strip();
    if (before.endsWith("\"") || before.endsWith("'")) {
      findings.add(
          FindingId.TEXT_AFTER_QUOTE,
          at,
          Say.quoted(line.substring(before(line, at.column()).length()).strip())
              + " stands behind the closing quote",
          "Put the whole text in double quotes; write \\\" for a quote inside it.");
    } else if (!before.isEmpty()) {
      syntax(problem, at);
    } else if (!noBlank(lastLine(at.line() - 1))) {
      indent(at, "this line fits no line above by its indent");
    }
  }

  private void openQuote(SourceSpot at, String how) {
    findings.add(
        FindingId.OPEN_QUOTE, at, "a quote opens here and " + how, "Close it in the same line.");
  }

  private void indent(SourceSpot at, String message) {
    int above = lastLine(at.line() - 1);
    String mend =
        "Blanks before it: "
            + indent(source.line(at.line()))
            + "; before line "
            + above
            + ": "
            + indent(source.line(above))
            + ". Keys that belong together start in one column.";
    findings.add(FindingId.INDENT, at, message, mend);
  }

  private void inScalar(String problem, String context, SourceSpot from, SourceSpot at) {
    if (context.contains("quoted scalar") && problem.startsWith("found unexpected")) {
      openQuote(from, "is not closed");
    } else if (context.contains("double-quoted")) {
      findings.add(
          FindingId.ESCAPE,
          at,
          "`\\` starts no known sign in these double quotes",
          "Write \\\\ for a backslash, or use single quotes.");
    } else if (context.contains("block scalar")) {
      findings.add(
          FindingId.BLOCK_TEXT,
          from,
          "`>` and `|` announce a text on the lines below; something stands behind the sign",
          "Start the text on the next line, or put it in double quotes.");
    } else if (problem.contains("cannot start any token")) {
      String sign = String.valueOf(problem.charAt(problem.indexOf('\'') + 1));
      findings.add(
          FindingId.RESERVED_SIGN,
          at,
          Say.quoted(sign) + " cannot start a text",
          "Put the text in double quotes.");
    } else {
      anchorOrTag(problem, context, from, at);
    }
  }

  private void anchorOrTag(String problem, String context, SourceSpot from, SourceSpot at) {
    if (context.contains("alias") || context.contains("anchor")) {
      findings.add(
          FindingId.ANCHOR,
          from,
          "a text cannot start with `*` or `&`",
          "Put the text in double quotes.");
    } else if (context.contains("tag") || problem.contains("tag")) {
      findings.add(
          FindingId.TAG, from, "a text cannot start with `!`", "Put the text in double quotes.");
    } else {
      syntax(problem, at);
    }
  }

  private void syntax(String problem, SourceSpot at) {
    findings.add(FindingId.SYNTAX, at, "this is no YAML: " + problem, MEND);
  }

  /** Returns the number of the last line up to one that is neither blank nor a comment; or 0. */
  private int lastLine(int from) {
    int number = from;
    while (number > 0 && isBlankOrComment(source.line(number))) {
      number--;
    }
    return number;
  }

  private static boolean isBlankOrComment(String line) {
    return line.isBlank() || line.strip().startsWith("#");
  }

  private static int indent(String line) {
    return line.length() - line.stripLeading().length();
  }

  private static String before(String line, int column) {
    int count = Math.min(column - 1, line.codePointCount(0, line.length()));
    return line.substring(0, line.offsetByCodePoints(0, Math.max(count, 0)));
  }

  private SourceSpot spot(Mark mark) {
    return YamlText.spot(file, mark);
  }

  /**
   * A quoted text of several lines; often its first quote was never closed and ends at the next one
   * that opens.
   */
  record LongQuote(SourceSpot spot, int endLine) {}
}
