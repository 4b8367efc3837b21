package handwheel.app;

import handwheel.diagnostics.NearestWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** The words behind a command: options with a value, options without, and the rest. */
final class Arguments {
  private final Map<String, String> values = new TreeMap<>();
  private final TreeSet<String> flags = new TreeSet<>();
  private final List<String> rest = new ArrayList<>();

  private Arguments() {}

  /**
   * Sorts the words.
   *
   * @param words behind the command
   * @param withValue options that need a value, such as {@code --seed}
   * @param without options that stand alone
   * @throws Usage if an option is unknown, stands twice or lacks its value
   */
  static Arguments of(List<String> words, List<String> withValue, List<String> without)
      throws Usage {
    Arguments a = new Arguments();
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      if (withValue.contains(word)) {
        if (i + 1 == words.size()) {
          throw new Usage("`" + word + "` needs a value behind it.");
        }
        i++;
        if (a.values.put(word, words.get(i)) != null) {
          throw new Usage("`" + word + "` stands twice.");
        }
      } else if (without.contains(word)) {
        a.flags.add(word);
      } else if (word.startsWith("--")) {
        throw unknown(word, withValue, without);
      } else {
        a.rest.add(word);
      }
    }
    return a;
  }

  private static Usage unknown(String word, List<String> withValue, List<String> without) {
    List<String> valid = new ArrayList<>(withValue);
    valid.addAll(without);
    String offer = NearestWords.offer(word, valid);
    return new Usage("`" + word + "` is no option of this command. " + offer);
  }

  boolean has(String flag) {
    return flags.contains(flag);
  }

  Optional<String> value(String option) {
    return Optional.ofNullable(values.get(option));
  }

  List<String> rest() {
    return List.copyOf(rest);
  }

  /**
   * Returns the only word behind the options.
   *
   * @throws Usage if there is none or more than one
   */
  String only(String what) throws Usage {
    if (rest.size() != 1) {
      throw new Usage("one " + what + " is needed, " + rest.size() + " were given.");
    }
    return rest.get(0);
  }

  /**
   * Returns a whole number.
   *
   * @throws Usage if it is none
   */
  long number(String option, long otherwise) throws Usage {
    Optional<String> text = value(option);
    try {
      return text.isPresent() ? Long.parseLong(text.get()) : otherwise;
    } catch (NumberFormatException e) {
      throw new Usage("`" + option + " " + text.orElse("") + "`: a whole number is needed.");
    }
  }

  /**
   * Returns a figure above 0.
   *
   * @throws Usage if it is none
   */
  double decimal(String option, double otherwise) throws Usage {
    Optional<String> text = value(option);
    try {
      double figure = text.isPresent() ? Double.parseDouble(text.get()) : otherwise;
      if (figure > 0 && figure <= 1000) {
        return figure;
      }
    } catch (NumberFormatException e) {
      // Told below, with every other figure that will not do.
    }
    throw new Usage(
        "`" + option + " " + text.orElse("") + "`: a figure above 0 and up to 1000 is needed.");
  }
}
