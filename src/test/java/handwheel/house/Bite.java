package handwheel.house;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A small program and the rules it breaks. They stand in {@code bites.txt}: a line {@code == RULE
 * RULE} or {@code == OK} opens a program, then comes one line {@code package: members} for each
 * class. In a line, {@code $1} is the first class of the program; a line {@code package: !text} is
 * a whole declaration, in which {@code $} is the name.
 *
 * @param number of the program in the file, from 1
 * @param rules names of the rules it breaks, sorted; none if it is allowed
 * @param lines what follows the opening line
 */
record Bite(int number, List<String> rules, List<String> lines) {
  private static final String IMPORTS =
      "import java.io.*; import java.util.*; import java.util.stream.*;";

  /** Reads all programs. */
  static List<Bite> all() {
    List<Bite> all = new ArrayList<>();
    for (String part : Resource.text("bites.txt").split("(?m)^== ", -1)) {
      if (!part.isBlank()) {
        all.add(of(all.size() + 1, part.strip().lines().toList()));
      }
    }
    return all;
  }

  private static Bite of(int number, List<String> lines) {
    List<String> rules =
        Arrays.stream(lines.get(0).split(" ", -1))
            .filter(word -> !word.equals("OK"))
            .sorted()
            .toList();
    return new Bite(number, rules, lines.subList(1, lines.size()));
  }

  /** Returns path to source text, a file for each class. */
  Map<String, String> sources() {
    Map<String, String> sources = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      String path = fullName(i).replace('.', '/') + ".java";
      sources.put(path, "package " + packageName(i) + "; " + IMPORTS + declaration(i));
    }
    return sources;
  }

  /** Says whether a class belongs to this program. */
  boolean owns(String className) {
    return className.contains("." + prefix());
  }

  private String declaration(int i) {
    String text = lines.get(i).substring(lines.get(i).indexOf(':') + 1).strip();
    for (int j = 0; j < lines.size(); j++) {
      text = text.replace("$" + (j + 1), fullName(j));
    }
    return text.startsWith("!")
        ? text.substring(1).replace("$", simpleName(i))
        : " public final class " + simpleName(i) + " { " + text + " }";
  }

  private String packageName(int i) {
    String name = lines.get(i).substring(0, lines.get(i).indexOf(':'));
    return name.contains(".") ? name : "handwheel." + name;
  }

  private String fullName(int i) {
    return packageName(i) + "." + simpleName(i);
  }

  private String simpleName(int i) {
    return prefix() + (i + 1);
  }

  private String prefix() {
    return "Program" + number + "Class";
  }

  @Override
  public String toString() {
    return rules + " " + lines;
  }
}
