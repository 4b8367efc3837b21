package handwheel.drill;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.logbook.Entry;
import handwheel.plant.Quantity;
import handwheel.reader.Read;
import handwheel.reader.ScriptReader;
import handwheel.reader.ShippedFiles;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import handwheel.ship.Ship;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A run of a small script with some acts in it, and what came of it second by second. */
final class FaultRun {
  static final Ship SHIP = ShippedFiles.ship().value().orElseThrow();

  private final List<Entry> entries = new ArrayList<>();
  private final List<SortedMap<Quantity, Double>> truths = new ArrayList<>();
  final Session session;

  private FaultRun(Casualty casualty, List<String> orders, int seconds) {
    session = Session.open(SHIP, casualty, 2, Mode.PRACTICE, entries::add);
    note();
    for (int s = 0; s < seconds; s++) {
      offer(orders, s);
      for (int tick = 0; tick < 20; tick++) {
        session.tick();
      }
      note();
    }
  }

  private void offer(List<String> orders, int second) {
    OrderText reader = new OrderText(SHIP, List.of());
    for (String line : orders) {
      String[] parts = line.split(" ", 2);
      if (Integer.parseInt(parts[0]) == second) {
        OrderResult.Understood order = (OrderResult.Understood) reader.read(parts[1]);
        session.offer(new Input.Said(order.order(), session.now()));
      }
    }
  }

  private void note() {
    SortedMap<Quantity, Double> now = new TreeMap<>();
    for (Quantity quantity : Quantity.values()) {
      now.put(quantity, session.truth(quantity));
    }
    truths.add(now);
  }

  double truth(Quantity quantity, int second) {
    return Objects.requireNonNull(truths.get(second).get(quantity));
  }

  List<String> events() {
    return of(Entry.PlantEvent.class).map(Entry.PlantEvent::what).toList();
  }

  List<String> looks() {
    return of(Entry.Looked.class).map(Entry.Looked::say).toList();
  }

  List<String> refusals() {
    return of(Entry.Refused.class).filter(Entry.Refused::fault).map(Entry.Refused::why).toList();
  }

  private <T extends Entry> Stream<T> of(Class<T> kind) {
    return entries.stream().filter(kind::isInstance).map(kind::cast);
  }

  static FaultRun play(String acts, int seconds) {
    return play(acts, seconds, "", List.of());
  }

  /** Plays acts from the first tick on, others after half a minute, orders by their second. */
  static FaultRun play(String acts, int seconds, String later, List<String> orders) {
    String text =
        """
        handwheel: script 1
        id: try
        title: A try
        family: steam-leak
        ship: alder-reach
        objective: To see what a fault does.
        cautions:
          - {id: none, signal: CAUTION, hazard: A test., consequence: None., avoid: Nothing., before: [told]}
        brief: A test.
        start: {condition: full-power, crew: green}
        limit: 10 min
        phases:
          - {id: now, do: [%s], next: [{to: later, after: 30 s}]}
          - {id: later, do: [%s], next: [{to: over, after: 500 s}]}
          - {id: over, end: true}
        response:
          - {id: told, report: all-well, to: watch-engineer, within: 60 s of cue start, points: 100, basis: trade-rule, why: It is a test.}
        pass: 80 points
        witness:
          - {upon: cue start, wait: 1 s, say: report all-well to watch-engineer}
        """
            .formatted(
                String.join(
                    ", ", nonBlank("{cue: start, told: everywhere, text: It begins.}", acts)),
                later);
    Read<Casualty> read =
        ScriptReader.read("try.yaml", text.getBytes(StandardCharsets.UTF_8), SHIP);
    assertThat(read.value()).as(() -> read.findings().toString()).isPresent();
    return new FaultRun(read.value().orElseThrow(), orders, seconds);
  }

  static List<String> nonBlank(String... texts) {
    return Stream.of(texts).filter(t -> !t.isBlank()).toList();
  }
}
