package handwheel.screen;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.casualty.WitnessLine;
import handwheel.reader.ScriptReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A scripted typist gives every order of every witness with as few keys as he can, Enter counted:
 * by the short form where there is one, and by words cut short.
 */
final class TypistTest {
  private static final int MOST_KEYS_SHORT = 6;
  private static final int MOST_KEYS_AHEAD = 15;

  /** Every line of the codes a drilled man has in his fingers; the rule makes the others. */
  private static final List<String> THINGS =
      List.of(
          "ms", "bks", "as", "c", "sb", "bb", "eg", "fp", "mf", "ef", "ed", "fo", "sf", "xf", "shv",
          "hhv", "sd", "b1", "b2", "bv1", "bv2", "f1", "f2", "df1", "df2", "d1", "d2", "t1", "t2",
          "s1", "s2", "s3", "s4", "s5", "h1", "h2", "h3");

  private static final List<String> GAUGES =
      List.of(
          "w", "dp", "lp", "bl", "bs", "bh", "hp", "so", "sf", "fd", "ft", "ab", "bk", "wh", "sa",
          "bi", "t1", "t2");

  private final List<Integer> byForm = new ArrayList<>();
  private final List<Integer> byWords = new ArrayList<>();

  @Test
  void theMedianOrderTakesFewKeys() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("drills"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
        count(
            ScriptReader.read(file.toString(), Files.readAllBytes(file), SteamLeak.FOUND.ship())
                .value()
                .orElseThrow());
      }
    }
    assertThat(median(byForm)).as("by short form").isLessThanOrEqualTo(MOST_KEYS_SHORT);
    assertThat(median(byWords)).as("by type-ahead").isLessThanOrEqualTo(MOST_KEYS_AHEAD);
  }

  private static int median(List<Integer> keys) {
    List<Integer> sorted = new ArrayList<>(keys);
    Collections.sort(sorted);
    return sorted.get(sorted.size() / 2);
  }

  private void count(Casualty casualty) {
    Expander expander = new Expander(SteamLeak.FOUND.ship(), casualty.messages());
    for (WitnessLine line : casualty.witness()) {
      int words = cutShort(expander, line.say()) + 1;
      byWords.add(words);
      byForm.add(form(expander, casualty, line.say()).map(f -> f.length() + 1).orElse(words));
    }
  }

  private static Optional<String> form(Expander expander, Casualty casualty, String say) {
    List<String> codes = new ArrayList<>();
    expander.card().forEach(f -> codes.add(f.code()));
    THINGS.forEach(t -> "osxia".chars().forEach(v -> codes.add(t + (char) v)));
    THINGS.forEach(t -> "osxia".chars().forEach(v -> codes.add(t + (char) v + "r")));
    GAUGES.forEach(g -> codes.addAll(List.of(g + "?", g + "??", g + "?r")));
    casualty.messages().forEach(m -> addBeginnings(m, codes));
    codes.addAll(List.of("t1", "t2", "srs", "hrs", "sgo", "hgo"));
    digits(say)
        .ifPresent(
            d -> codes.addAll(List.of("o" + d, "s" + d + "rs", "h" + d + "rs", "s" + d + "go")));
    return codes.stream()
        .filter(c -> expander.expand(c).sentences().equals(List.of(say)))
        .min((a, b) -> Integer.compare(a.length(), b.length()));
  }

  private static Optional<String> digits(String say) {
    String digits = say.replaceAll("[^0-9]", "");
    return digits.isEmpty() ? Optional.empty() : Optional.of(digits);
  }

  private static void addBeginnings(String message, List<String> codes) {
    for (int i = 1; i <= message.length(); i++) {
      codes.add("/" + message.substring(0, i));
    }
  }

  /** Cuts one word after the other to the shortest beginning that still means the same. */
  private static int cutShort(Expander expander, String say) {
    String[] words = say.split(" ", -1);
    for (int w = words.length - 1; w >= 0; w--) {
      for (String cut : cuts(words[w])) {
        String full = words[w];
        words[w] = cut;
        Expansion means = expander.expand(String.join(" ", words));
        if (means.isComplete() && means.sentences().equals(List.of(say))) {
          break;
        }
        words[w] = full;
      }
    }
    return String.join(" ", words).length();
  }

  /** Beginnings of a word, and of its parts run together, the shortest first. */
  private static List<String> cuts(String word) {
    List<String> cuts = new ArrayList<>();
    for (int i = 1; i <= word.length(); i++) {
      cuts.add(word.substring(0, i));
    }
    String[] parts = word.split("-", -1);
    for (int i = 1; parts.length > 1 && i <= parts[parts.length - 1].length(); i++) {
      StringBuilder run = new StringBuilder();
      for (int p = 0; p < parts.length - 1; p++) {
        run.append(parts[p].charAt(0));
      }
      cuts.add(run + parts[parts.length - 1].substring(0, i));
    }
    cuts.sort(Comparator.comparingInt(String::length));
    return cuts;
  }
}
