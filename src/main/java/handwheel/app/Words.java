package handwheel.app;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Words behind an act of the board: pairs of a key and its value. */
record Words(Map<String, String> pairs) {
  static Words of(List<String> words, List<String> keys) throws Usage {
    Map<String, String> pairs = new TreeMap<>();
    for (int i = 0; i < words.size(); i += 2) {
      if (!keys.contains(words.get(i)) || i + 1 == words.size()) {
        throw new Usage(
            "`"
                + words.get(i)
                + "`: one of "
                + String.join(", ", keys)
                + " and its value is needed.");
      }
      pairs.put(words.get(i), words.get(i + 1));
    }
    return new Words(pairs);
  }

  static String only(List<String> words, String what) throws Usage {
    if (words.isEmpty()) {
      throw new Usage("a " + what + " is needed.");
    }
    return String.join(" ", words);
  }

  static void none(List<String> words) throws Usage {
    if (!words.isEmpty()) {
      throw new Usage("`" + words.get(0) + "` is not expected here.");
    }
  }

  /** Returns the words from one on, as one text. */
  static String rest(List<String> words, int from) {
    return from >= words.size() ? "" : String.join(" ", words.subList(from, words.size()));
  }

  String get(String key) {
    return pairs.getOrDefault(key, "");
  }

  int number(String key, int otherwise) throws Usage {
    return (int) decimal(key, otherwise);
  }

  double decimal(String key, double otherwise) throws Usage {
    try {
      double figure = pairs.containsKey(key) ? Double.parseDouble(get(key)) : otherwise;
      if (figure >= 0 && figure <= Integer.MAX_VALUE) {
        return figure;
      }
    } catch (NumberFormatException e) {
      // Told below, with every other figure that will not do.
    }
    throw new Usage("`" + key + " " + get(key) + "`: a figure of 0 or more is needed.");
  }
}
