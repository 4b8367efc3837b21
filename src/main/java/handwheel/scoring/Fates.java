package handwheel.scoring;

import handwheel.logbook.Entry;
import java.util.List;
import java.util.Optional;

/** What became of each order, as far as a step is concerned. */
final class Fates {
  private final RunLog log;
  private final Belays belays;

  Fates(RunLog log) {
    this.log = log;
    this.belays = new Belays(log);
  }

  /** Every order that seeks an aim, in order of time. */
  List<Told> seeking(Aim aim) {
    return log.orders().stream().filter(aim::isSoughtBy).toList();
  }

  /**
   * What had become of an order by a tick. A wrong repeat-back comes first: whatever follows, it
   * was caught or it was not.
   */
  Fate of(Told told, Aim aim, long untilTick) {
    Optional<Entry.Repeated> wrong = log.wrongRepeat(told).filter(r -> r.t() <= untilTick);
    if (wrong.isPresent()) {
      return afterWrongRepeat(told, wrong.get(), untilTick);
    }
    return refusal(told, aim, untilTick)
        .or(() -> manHurt(told, aim, untilTick))
        .or(() -> calledBack(told, told.tick(), untilTick))
        .or(() -> countermanded(told, aim, untilTick))
        .orElse(new Fate(Fate.Kind.STANDING, untilTick));
  }

  /** Caught means called back; a belay stops nothing that is done already. */
  private Fate afterWrongRepeat(Told told, Entry.Repeated wrong, long untilTick) {
    return calledBack(told, wrong.t(), untilTick)
        .map(f -> new Fate(Fate.Kind.CREW_OR_GEAR, f.tick()))
        .orElse(new Fate(Fate.Kind.NOT_CONFIRMED, wrong.t()));
  }

  private Optional<Fate> refusal(Told told, Aim aim, long untilTick) {
    return log.all(Entry.Refused.class)
        .filter(r -> r.n() == told.n() && r.t() <= untilTick)
        .filter(r -> aim.isTouchedBy(told, r.fitting()))
        .findFirst()
        .map(r -> new Fate(r.fault() ? Fate.Kind.CREW_OR_GEAR : Fate.Kind.OWN_DOING, r.t()));
  }

  private Optional<Fate> manHurt(Told told, Aim aim, long untilTick) {
    return log.all(Entry.Person.class)
        .filter(p -> told.who().filter(p.who()::equals).isPresent())
        .filter(p -> p.is().equals("hurt") || p.is().equals("down"))
        .filter(p -> p.t() >= told.tick() && p.t() <= untilTick)
        .filter(p -> !isDone(told, aim, p.t()))
        .findFirst()
        .map(p -> new Fate(Fate.Kind.CREW_OR_GEAR, p.t()));
  }

  private boolean isDone(Told told, Aim aim, long byTick) {
    if (aim.fitting().isEmpty()) {
      return log.all(Entry.Reading.class).anyMatch(r -> r.n() == told.n() && r.t() <= byTick);
    }
    return log.all(Entry.Moved.class)
        .filter(m -> m.n() == told.n() && m.t() <= byTick)
        .anyMatch(m -> aim.fitting().get().equals(m.fitting()));
  }

  private Optional<Fate> calledBack(Told told, long fromTick, long untilTick) {
    return belays
        .of(told)
        .filter(b -> b.tick() >= fromTick && b.tick() <= untilTick)
        .map(b -> new Fate(Fate.Kind.OWN_DOING, b.tick()));
  }

  private Optional<Fate> countermanded(Told told, Aim aim, long untilTick) {
    return log.orders().stream()
        .filter(o -> o.n() > told.n() && o.tick() <= untilTick && aim.isUndoneBy(o))
        .findFirst()
        .map(o -> new Fate(Fate.Kind.OWN_DOING, o.tick()));
  }

  /** Whether an order that seeks an aim, said before a tick, was repeated wrong and not caught. */
  boolean isMisheardBefore(Aim aim, long tick) {
    return seeking(aim).stream()
        .filter(o -> o.tick() < tick)
        .anyMatch(o -> of(o, aim, tick).is(Fate.Kind.NOT_CONFIRMED));
  }

  /**
   * Goes back from what did it over the orders before it that failed through crew or gear, and
   * returns the earliest: its instant is the trainee's.
   *
   * @param before orders with this number and later ones are left out
   * @param untilTick when it was done
   * @param isStandingKept whether an earlier order that nothing stands against counts as well
   */
  Optional<Told> earliest(Aim aim, int before, long untilTick, boolean isStandingKept) {
    Optional<Told> first = Optional.empty();
    List<Told> attempts =
        seeking(aim).stream().filter(o -> o.n() < before && o.tick() <= untilTick).toList();
    for (int i = attempts.size() - 1; i >= 0; i--) {
      Fate fate = of(attempts.get(i), aim, untilTick);
      boolean isKept = isStandingKept && fate.is(Fate.Kind.STANDING);
      if (!isKept && !fate.is(Fate.Kind.CREW_OR_GEAR)) {
        return first;
      }
      first = Optional.of(attempts.get(i));
    }
    return first;
  }
}
