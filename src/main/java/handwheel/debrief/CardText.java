package handwheel.debrief;

import java.util.ArrayList;
import java.util.List;

/** A card as lines of at most 80 characters. */
public final class CardText {
  private static final int WIDTH = 80;

  private final List<String> lines = new ArrayList<>();

  private CardText() {}

  /**
   * Prints a card.
   *
   * @param card the card
   * @return its lines
   */
  public static List<String> lines(Card card) {
    CardText text = new CardText();
    text.wrap("", Card.STANDING);
    text.lines.add("");
    text.wrap("", "DRILL CARD: " + card.title());
    card.sections().forEach(text::section);
    return text.lines;
  }

  private void section(Card.Section section) {
    lines.add("");
    lines.add(section.heading());
    for (List<String> row : section.rows()) {
      wrap("  - ", row.get(0));
      for (int i = 1; i < row.size(); i++) {
        if (!row.get(i).isEmpty()) {
          wrap("      ", section.columns().get(i) + ": " + row.get(i));
        }
      }
    }
  }

  /** Breaks a text at blanks; further lines stand under the first. */
  private void wrap(String indent, String text) {
    StringBuilder line = new StringBuilder(indent);
    boolean isBare = true;
    for (String word : text.split(" ", -1)) {
      if (!isBare && line.length() + 1 + word.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(" ".repeat(indent.length()));
        isBare = true;
      }
      line.append(isBare ? "" : " ").append(word);
      isBare = false;
    }
    lines.add(line.toString());
  }
}
