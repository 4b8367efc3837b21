package handwheel.debrief;

import handwheel.casualty.Never;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.casualty.Window;
import handwheel.ship.Fitting;
import handwheel.ship.Gauge;
import handwheel.ship.Ship;
import handwheel.ship.Watchstander;
import handwheel.units.Measure;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a step or a rule asks for, in words for a card. */
final class CardWords implements StepTest.Visitor<String> {
  private static final int TICKS_PER_S = 20;

  private final Ship ship;

  CardWords(Ship ship) {
    this.ship = ship;
  }

  /** Returns the act with its times and place. */
  String act(Step step) {
    StringBuilder words = new StringBuilder(step.test().accept(this));
    step.place()
        .ifPresent(
            p -> words.append(p == Step.Side.LOCAL ? ", at its own place" : ", from outside"));
    step.within().ifPresent(w -> words.append(", within ").append(window(w)));
    step.done().ifPresent(d -> words.append(", done within ").append(window(d)));
    if (!step.after().isEmpty()) {
      String before =
          step.after().entrySet().stream()
              .map(e -> e.getKey() + " (" + e.getValue() + ")")
              .collect(Collectors.joining(", "));
      words.append(", after ").append(before);
    }
    return words.toString();
  }

  /** Returns a time allowed and what it runs from. */
  private static String window(Window window) {
    return window.ticks() / TICKS_PER_S
        + " s of "
        + window.since().name().toLowerCase(Locale.ROOT)
        + " `"
        + window.of()
        + "`";
  }

  @Override
  public String ordered(StepTest.Ordered test) {
    return "Order: " + test.order();
  }

  @Override
  public String fittingIs(StepTest.FittingIs test) {
    String names = test.fittings().stream().map(this::fitting).collect(Collectors.joining(" and "));
    return names + (test.isOpen() ? " open or running" : " shut or stopped");
  }

  @Override
  public String readProof(StepTest.ReadProof test) {
    String name = ship.gauge(test.gauge()).map(Gauge::name).orElse(test.gauge());
    String bound = Measure.ofSi(test.bound().si(), test.unit()).text();
    return "Read " + name + (test.bound().isUpper() ? " below " : " above ") + bound;
  }

  @Override
  public String reported(StepTest.Reported test) {
    String to = ship.watchstander(test.to()).map(Watchstander::title).orElse(test.to());
    return "Report `" + test.message() + "` to " + to;
  }

  @Override
  public String mustered(StepTest.Mustered test) {
    return "Everyone counted by name";
  }

  /** Returns what a rule forbids. */
  String never(Never never) {
    if (never.act() instanceof Never.Moving m) {
      return fitting(m.fitting()) + " is not moved toward " + (m.isOpening() ? "open" : "shut");
    }
    Never.Sending s = (Never.Sending) never.act();
    String who = s.who().equals("anyone") ? "Nobody" : s.who();
    return who
        + (s.who().equals("anyone") ? " is" : " is not")
        + " sent to "
        + String.join(", ", s.places());
  }

  private String fitting(String id) {
    return ship.fitting(id).map(Fitting::name).orElse(id);
  }
}
