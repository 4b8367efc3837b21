package handwheel.screen;

import handwheel.diagnostics.NearestWords;
import handwheel.ship.Order;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Turns what is typed into full orders: short forms first, else each word may be cut short, the
 * words may stand in any order that only one reading has, and a slip of the fingers is mended and
 * told. Nothing is guessed: a line that can be read in two ways is no order.
 */
public final class Expander {
  private final OrderText reader;
  private final OrderGrammar grammar;
  private final ShortForms shortForms;

  /**
   * Makes an expander.
   *
   * @param ship whose words are valid
   * @param messages reports that can be passed
   */
  public Expander(Ship ship, List<String> messages) {
    this.reader = new OrderText(ship, messages);
    this.grammar = new OrderGrammar(ship, messages);
    this.shortForms = new ShortForms(ship, messages);
  }

  /**
   * Expands a typed line.
   *
   * @param typed the line
   * @return what it stands for
   */
  public Expansion expand(String typed) {
    String line = typed.strip();
    Optional<ShortForms.Form> form = shortForms.of(line.toLowerCase(Locale.ROOT));
    if (form.isPresent()) {
      return orders(form.get().orders());
    }
    Readings readings = Readings.none(grammar);
    List<String> words = words(line);
    StringBuilder mended = new StringBuilder();
    for (String word : words) {
      Readings longer = readings.with(word);
      if (longer.isNone()) {
        Optional<List<String>> turned = AnyOrder.of(grammar, words);
        if (turned.isPresent()) {
          return orders(List.of(String.join(" ", turned.get())));
        }
        Optional<String> near = readings.near(word);
        if (near.isEmpty()) {
          return wrong(readings, word);
        }
        mended.append("`").append(word).append("` read as `").append(near.get()).append("`. ");
        longer = readings.with(near.get());
      }
      readings = longer;
    }
    return read(readings).after(mended.toString());
  }

  private static List<String> words(String line) {
    return line.isBlank() ? List.of() : Arrays.asList(line.strip().split("\\s+", -1));
  }

  private static Expansion wrong(Readings before, String word) {
    Slot next = before.next();
    String offer = NearestWords.offer(word, next.words());
    String what = "`" + word + "` where " + next.what() + " was expected.";
    String common = String.join(" ", before.common());
    String sentence = common.isEmpty() ? word : common + " " + word;
    return Expansion.incomplete(sentence, what + (offer.isEmpty() ? "" : " " + offer));
  }

  private Expansion read(Readings readings) {
    String common = String.join(" ", readings.common());
    if (!readings.isOne()) {
      List<String> which = readings.at(readings.common().size());
      return Expansion.incomplete(common, "Which? " + String.join(", ", which));
    }
    Slot next = readings.next();
    return next.canEnd() ? orders(List.of(common)) : then(common, next.what());
  }

  private static Expansion then(String common, String what) {
    return Expansion.incomplete(common, "Next: " + what + ".");
  }

  private Expansion orders(List<String> sentences) {
    List<Order> orders = new ArrayList<>();
    for (String sentence : sentences) {
      OrderResult result = reader.read(sentence);
      if (result instanceof OrderResult.Understood u) {
        orders.add(u.order());
      } else {
        OrderResult.NotUnderstood n = (OrderResult.NotUnderstood) result;
        return Expansion.incomplete(sentence, (n.message() + ". " + n.mend()).strip());
      }
    }
    return new Expansion(sentences, orders, "");
  }

  /**
   * Completes a line as far as there is only one way.
   *
   * @param typed the line
   * @return the line with its words in full; as it was where nothing can be added
   */
  String completed(String typed) {
    Readings readings = readings(typed);
    boolean isShort = shortForms.of(typed.strip().toLowerCase(Locale.ROOT)).isPresent();
    if (isShort || readings.isNone()) {
      return typed;
    }
    List<String> same = new ArrayList<>(readings.common());
    List<String> next = readings.next().words();
    if (readings.isOne()) {
      boolean isOnlyWay = next.size() == 1 && !readings.next().canEnd();
      if (isOnlyWay && (typed.isEmpty() || typed.endsWith(" "))) {
        same.add(next.get(0));
      }
      return same.isEmpty() ? typed : String.join(" ", same) + " ";
    }
    return begun(readings, same, typed);
  }

  private Readings readings(String typed) {
    Readings readings = Readings.none(grammar);
    for (String word : words(typed)) {
      readings = readings.with(word);
    }
    return readings;
  }

  /** Adds the letters that all readings of the last word share, if only that word is open. */
  private static String begun(Readings readings, List<String> same, String typed) {
    int last = words(typed).size() - 1;
    if (same.size() < last) {
      return typed;
    }
    List<String> open = readings.at(last);
    String shared = open.get(0);
    while (!allBegin(open, shared)) {
      shared = shared.substring(0, shared.length() - 1);
    }
    same.add(shared);
    return shared.length() < words(typed).get(last).length() ? typed : String.join(" ", same);
  }

  private static boolean allBegin(List<String> words, String with) {
    return words.stream().allMatch(w -> w.startsWith(with));
  }

  /**
   * Returns the valid words for the word that is being typed, or for the next after a blank.
   *
   * @param typed the line
   * @return valid words; empty where none is
   */
  public List<String> offered(String typed) {
    boolean isNext = typed.isBlank() || typed.endsWith(" ");
    Readings readings = readings(typed);
    if (isNext || readings.isNone()) {
      return readings.next().words();
    }
    return readings.at(readings.all().get(0).size() - 1);
  }

  /** Returns the card of short forms. */
  List<ShortForms.Form> card() {
    return shortForms.card();
  }

  /** Reads a full order again. */
  Optional<Order> order(String text) {
    return reader.read(text) instanceof OrderResult.Understood u
        ? Optional.of(u.order())
        : Optional.empty();
  }
}
