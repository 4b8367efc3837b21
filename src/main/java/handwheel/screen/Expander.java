package handwheel.screen;

import handwheel.ship.Order;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.List;

/**
 * Turns what is typed into full orders: short forms first, else each word may be cut to any
 * beginning that only one valid word has at that point.
 */
public final class Expander {
  private static final int MOST_OFFERED = 6;

  private final OrderText reader;
  private final List<String> words;
  private final ShortForms shortForms;

  /**
   * Makes an expander.
   *
   * @param ship whose words are valid
   * @param messages reports that can be passed
   */
  public Expander(Ship ship, List<String> messages) {
    this.reader = new OrderText(ship, messages);
    this.words = Words.of(ship, messages);
    this.shortForms = new ShortForms(messages);
  }

  /**
   * Expands a typed line.
   *
   * @param typed the line
   * @return what it stands for
   */
  public Expansion expand(String typed) {
    List<String> shorts = shortForms.of(typed.strip());
    if (!shorts.isEmpty()) {
      return together(shorts);
    }
    StringBuilder full = new StringBuilder();
    for (String word : typed.strip().split("\\s+", -1)) {
      List<String> fit = fitting(full.toString(), word);
      if (fit.size() > 1) {
        return new Expansion(List.of(full + word), List.of(), "Which? " + offered(fit));
      }
      full.append(fit.isEmpty() ? word : fit.get(0)).append(' ');
    }
    return together(List.of(full.toString().strip()));
  }

  /** Returns the card of short forms. */
  List<String> card() {
    return shortForms.card();
  }

  private Expansion together(List<String> sentences) {
    List<Order> orders = new ArrayList<>();
    for (String sentence : sentences) {
      OrderResult result = reader.read(sentence);
      if (result instanceof OrderResult.Understood u) {
        orders.add(u.order());
      } else {
        OrderResult.NotUnderstood n = (OrderResult.NotUnderstood) result;
        return new Expansion(sentences, List.of(), capital(n.message()) + ". " + n.mend());
      }
    }
    return new Expansion(sentences, orders, "");
  }

  /** Returns the valid words that a typed word can stand for after what stands before it. */
  private List<String> fitting(String before, String word) {
    if (words.contains(word) && isValid(before, word)) {
      return List.of(word);
    }
    return words.stream().filter(w -> Words.begins(word, w) && isValid(before, w)).toList();
  }

  private boolean isValid(String before, String word) {
    OrderResult result = reader.read(before + word);
    return !(result instanceof OrderResult.NotUnderstood n)
        || n.column() > before.length() + word.length();
  }

  private static String offered(List<String> fit) {
    List<String> few = fit.stream().limit(MOST_OFFERED).toList();
    return String.join(", ", few) + (fit.size() > MOST_OFFERED ? ", ..." : "");
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
