package handwheel.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The drum glass as it is seen: water up to the level, steam above. A glass that is full or empty
 * looks the same at first sight, so the word stands beside it.
 *
 * @param dials the gauges before his eyes
 */
record Glass(List<Dial> dials) {
  private static final int WIDTH = 18;
  private static final String LEVEL = "drum-level";

  Glass {
    dials = List.copyOf(dials);
  }

  /** Returns rows of one width, the highest first; blank where no glass is in sight. */
  List<String> rows(int height) {
    Optional<Dial> level = dials.stream().filter(d -> d.id().equals(LEVEL)).findFirst();
    List<String> rows = new ArrayList<>();
    for (int row = height - 1; row >= 0; row--) {
      int at = row;
      rows.add(Text.left(level.map(d -> row(d, at, height)).orElse(""), WIDTH));
    }
    return rows;
  }

  private static String row(Dial level, int row, int height) {
    boolean isWater = level.share() > (row + 0.5) / height;
    String word = row == height - 1 ? word(level) : row == height / 2 ? "glass" : "";
    return "  ┃" + (isWater ? "~~~" : "   ") + "┃ " + word;
  }

  private static String word(Dial level) {
    if (level.share() >= 1) {
      return "full";
    }
    return level.share() <= 0 ? "empty" : "";
  }
}
