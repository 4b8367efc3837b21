package handwheel.ship;

import handwheel.diagnostics.NearestWords;
import handwheel.units.Measure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Reads canonical orders: {@code WHO VERB FITTING... [to SETTING] [from PLACE]}, {@code WHO go
 * PLACE}, {@code WHO look PLACE}, {@code [WHO] read GAUGE}, {@code report MESSAGE to WHO}, {@code
 * everyone leave}, {@code muster PLACE}, {@code belay WHO}. Every id must exist in the ship, every
 * message in the script.
 */
public final class OrderText {
  private final Ship ship;
  private final List<String> messages;

  /**
   * Makes a reader.
   *
   * @param ship whose ids are valid
   * @param messages ids of the reports that can be passed
   */
  public OrderText(Ship ship, List<String> messages) {
    this.ship = ship;
    this.messages = List.copyOf(messages);
  }

  /**
   * Reads one order.
   *
   * @param text one line
   * @return the order, or what is wrong with the text
   */
  public OrderResult read(String text) {
    Words words = Words.of(text);
    try {
      Order order = order(words);
      words.end();
      return new OrderResult.Understood(order);
    } catch (Wrong e) {
      return new OrderResult.NotUnderstood(e.column, e.message, e.mend);
    }
  }

  private Order order(Words words) throws Wrong {
    return switch (words.peek()) {
      case "everyone" -> {
        words.next();
        words.expect("leave");
        yield new Order.EveryoneLeave();
      }
      case "muster" -> {
        words.next();
        yield new Order.Muster(words.id("a place", this::placeIds));
      }
      case "belay" -> {
        words.next();
        yield new Order.Belay(words.id("a watchstander", this::whoIds));
      }
      case "report" -> report(words);
      case "read" -> {
        words.next();
        yield new Order.Read(Optional.empty(), words.id("a gauge", this::gaugeIds));
      }
      default -> told(words);
    };
  }

  private Order report(Words words) throws Wrong {
    words.next();
    String message = words.id("a report", () -> messages);
    words.expect("to");
    return new Order.Report(message, words.id("a watchstander", this::whoIds));
  }

  private Order told(Words words) throws Wrong {
    String who = words.id("a watchstander", this::starts);
    String verb = words.id("a verb", OrderText::verbs);
    return switch (verb) {
      case "go" -> new Order.Go(who, words.id("a place", this::placeIds));
      case "look" -> new Order.Look(who, words.id("a place", this::placeIds));
      case "read" -> new Order.Read(Optional.of(who), words.id("a gauge", this::gaugeIds));
      default -> work(who, Verb.ofWord(verb).orElseThrow(), words);
    };
  }

  private Order work(String who, Verb verb, Words words) throws Wrong {
    Supplier<List<String>> valid = verb == Verb.SET ? this::settables : () -> fittingIds(verb);
    List<String> fittings = new ArrayList<>();
    do {
      fittings.add(words.id("a fitting to " + verb.word(), valid));
    } while (!words.isDone() && !words.peek().equals("to") && !words.peek().equals("from"));
    Optional<Setting> setting = Optional.empty();
    if (words.take("to")) {
      boolean isOne = verb == Verb.SET && fittings.size() == 1;
      List<String> choices = isOne ? choices(fittings) : List.of();
      setting =
          Optional.of(
              new Setting(
                  choices.isEmpty() ? words.setting() : words.id("a setting", () -> choices)));
    } else if (verb == Verb.SET) {
      throw words.wrong("`set` needs `to` and what to set it to", "Write such as `to 60 %`.");
    }
    Optional<String> from = Optional.empty();
    if (words.take("from")) {
      from = Optional.of(words.id("a place", this::placeIds));
    }
    return new Order.Work(who, verb, fittings, setting, from);
  }

  /** The words a fitting can be set to; none where it is set to a measure. */
  private List<String> choices(List<String> fittings) {
    return fittings.stream()
        .flatMap(id -> ship.fitting(id).stream())
        .flatMap(f -> f.moves(Verb.SET).stream())
        .filter(m -> m.to().isEmpty())
        .flatMap(m -> m.port().words().stream())
        .distinct()
        .toList();
  }

  private static List<String> verbs() {
    List<String> words = new ArrayList<>(Arrays.stream(Verb.values()).map(Verb::word).toList());
    words.addAll(List.of("go", "look", "read"));
    return words;
  }

  private List<String> starts() {
    List<String> words = new ArrayList<>(whoIds());
    words.addAll(List.of("everyone", "muster", "belay", "report", "read"));
    return words;
  }

  private List<String> whoIds() {
    return ship.watch().stream().map(Watchstander::id).toList();
  }

  private List<String> placeIds() {
    return ship.places().stream().map(Place::id).toList();
  }

  private List<String> gaugeIds() {
    return ship.gauges().stream().map(Gauge::id).toList();
  }

  private List<String> fittingIds(Verb verb) {
    return ship.fittings().stream().filter(f -> !f.moves(verb).isEmpty()).map(Fitting::id).toList();
  }

  private List<String> settables() {
    List<String> ids = new ArrayList<>(fittingIds(Verb.SET));
    ship.watch().stream().flatMap(w -> w.holds().stream()).forEach(ids::add);
    return ids;
  }

  /** A text that is no order; never leaves this class. */
  private static final class Wrong extends Exception {
    private static final long serialVersionUID = 1L;
    private final int column;
    private final String message;
    private final String mend;

    Wrong(int column, String message, String mend) {
      super(message, null, false, false);
      this.column = column;
      this.message = message;
      this.mend = mend;
    }
  }

  /** The words of a line with the column each starts at. */
  private static final class Words {
    private final List<String> words = new ArrayList<>();
    private final List<Integer> columns = new ArrayList<>();
    private final int endColumn;
    private int at;

    private Words(int endColumn) {
      this.endColumn = endColumn;
    }

    static Words of(String text) {
      Words w = new Words(text.length() + 1);
      int start = -1;
      for (int i = 0; i <= text.length(); i++) {
        boolean blank = i == text.length() || Character.isWhitespace(text.charAt(i));
        if (blank && start >= 0) {
          w.words.add(text.substring(start, i));
          w.columns.add(start + 1);
          start = -1;
        } else if (!blank && start < 0) {
          start = i;
        }
      }
      return w;
    }

    boolean isDone() {
      return at >= words.size();
    }

    String peek() {
      return isDone() ? "" : words.get(at);
    }

    String next() {
      return words.get(at++);
    }

    boolean take(String word) {
      boolean is = peek().equals(word);
      if (is) {
        at++;
      }
      return is;
    }

    void expect(String word) throws Wrong {
      if (!take(word)) {
        throw wrong(found() + " where `" + word + "` was expected", "");
      }
    }

    String id(String what, Supplier<List<String>> valid) throws Wrong {
      List<String> ids = valid.get();
      if (!ids.contains(peek())) {
        throw wrong(found() + " where " + what + " was expected", NearestWords.offer(peek(), ids));
      }
      return next();
    }

    String setting() throws Wrong {
      if (isDone()) {
        throw wrong("nothing after `to`", "Write such as `to 60 %`.");
      }
      String word = next();
      boolean isMeasure = !isDone() && Measure.parse(word + " " + peek()).isPresent();
      return isMeasure ? word + " " + next() : word;
    }

    void end() throws Wrong {
      if (!isDone()) {
        throw wrong(found() + " after the end of the order", "Leave it out.");
      }
    }

    Wrong wrong(String message, String mend) {
      return new Wrong(isDone() ? endColumn : columns.get(at), message, mend);
    }

    private String found() {
      return isDone() ? "nothing" : "`" + peek() + "`";
    }
  }
}
