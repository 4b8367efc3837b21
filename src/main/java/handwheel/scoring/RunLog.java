package handwheel.scoring;

import handwheel.logbook.Entry;
import handwheel.ship.Order;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;

/** The entries of one run by kind, each kind in its order. */
final class RunLog {
  private final List<Entry> entries;
  private final OrderText reader;
  private final List<Told> orders;

  RunLog(List<Entry> entries, OrderText reader) {
    this.entries = List.copyOf(entries);
    this.reader = reader;
    this.orders = all(Entry.OrderSaid.class).map(s -> new Told(s, read(s.say()))).toList();
  }

  <T extends Entry> Stream<T> all(Class<T> kind) {
    return entries.stream().filter(kind::isInstance).map(kind::cast);
  }

  List<Told> orders() {
    return orders;
  }

  Optional<Told> order(int n) {
    return orders.stream().filter(o -> o.n() == n).findFirst();
  }

  Optional<Order> read(String say) {
    return reader.read(say) instanceof OrderResult.Understood u
        ? Optional.of(u.order())
        : Optional.empty();
  }

  /** First time a cue was given. */
  OptionalLong cueTick(String cue) {
    return all(Entry.CueGiven.class)
        .filter(c -> c.id().equals(cue))
        .mapToLong(Entry.CueGiven::t)
        .findFirst();
  }

  /** From here times are told: the first cue, or the start where none was given. */
  long zeroTick() {
    return all(Entry.CueGiven.class).mapToLong(Entry.CueGiven::t).findFirst().orElse(0);
  }

  /** The last tick known of. A state is entered every second, so nothing is missed by more. */
  long lastTick() {
    return Stream.of(
            all(Entry.State.class).mapToLong(Entry.State::t),
            all(Entry.OrderSaid.class).mapToLong(Entry.OrderSaid::t),
            all(Entry.Moved.class).mapToLong(Entry.Moved::t),
            all(Entry.Reading.class).mapToLong(Entry.Reading::t),
            all(Entry.CueGiven.class).mapToLong(Entry.CueGiven::t),
            all(Entry.Ended.class).mapToLong(Entry.Ended::t))
        .flatMapToLong(ticks -> ticks)
        .max()
        .orElse(0);
  }

  /** What the man who repeated something else than he was told understood. */
  Optional<Entry.Repeated> wrongRepeat(Told told) {
    return all(Entry.Repeated.class)
        .filter(r -> r.n() == told.n() && !r.say().equals(told.said().say()))
        .findFirst();
  }
}
