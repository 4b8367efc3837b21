package handwheel.house;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the text of a file must not hold, whatever its language. */
final class PlainText {
  static final int FILE_LINES_MAX = 500;

  /** Marks of unfinished work, split here so that this file does not hold them. */
  private static final Pattern UNFINISHED = Pattern.compile("\\b(TO" + "DO|FIX" + "ME)\\b");

  private static final Pattern BANNED_WORDS = bannedWords();

  private PlainText() {}

  private static Pattern bannedWords() {
    List<String> words = Resource.lines("banned-words.txt").stream().map(Pattern::quote).toList();
    return Pattern.compile(
        "\\b(" + String.join("|", words) + ")\\b", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  /** Returns what breaks the rules for a Java file, with file and line. */
  static List<String> javaBreaches(String name, String text) {
    List<String> lines = text.lines().toList();
    List<String> breaches = new ArrayList<>();
    if (lines.size() > FILE_LINES_MAX) {
      breaches.add(name + ":1: " + lines.size() + " lines");
    }
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).indexOf('\t') >= 0) {
        breaches.add(name + ":" + (i + 1) + ": tab");
      }
    }
    breaches.addAll(found(name, lines, UNFINISHED, "unfinished: "));
    breaches.addAll(wordBreaches(name, text));
    return breaches;
  }

  /** Returns the banned words in any text, with file and line. */
  static List<String> wordBreaches(String name, String text) {
    return found(name, text.lines().toList(), BANNED_WORDS, "word of the banned list: ");
  }

  /** Returns the first match in each line, with file, line and what it is. */
  static List<String> found(String name, List<String> lines, Pattern pattern, String what) {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Matcher match = pattern.matcher(lines.get(i));
      if (match.find()) {
        found.add(name + ":" + (i + 1) + ": " + what + match.group());
      }
    }
    return found;
  }
}
