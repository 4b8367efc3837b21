package handwheel.drill;

import handwheel.casualty.Casualty;
import handwheel.casualty.Fault;
import handwheel.casualty.Phase;
import handwheel.casualty.PhaseAct;
import handwheel.casualty.When;
import handwheel.logbook.Entry;
import handwheel.plant.StateWalker;
import java.util.Arrays;
import java.util.Optional;
import java.util.SortedMap;

/** Takes the casualty through its phases, every tick until nothing moves any more. */
final class Story {
  private static final int MOST_MICROSTEPS = 100;

  private final Scene scene;
  private final Casualty casualty;
  private final SortedMap<String, Double> drawn;
  private final Facts facts;
  private final Faults faults;
  private Phase phase;
  private long enteredTick;
  private long[] heldTicks = new long[0];

  Story(
      Scene scene, Casualty casualty, SortedMap<String, Double> drawn, Facts facts, Faults faults) {
    this.scene = scene;
    this.faults = faults;
    this.casualty = casualty;
    this.drawn = drawn;
    this.facts = facts;
    this.phase = casualty.phases().get(0);
  }

  /** Enters the first phase. */
  void start() {
    enter(phase);
  }

  boolean isOver() {
    return phase.isEnd();
  }

  /** Counts how long each condition has held, then takes every way out that is open. */
  void tick() {
    for (int i = 0; i < heldTicks.length; i++) {
      Optional<When> when = phase.next().get(i).when();
      heldTicks[i] = when.isPresent() && facts.holds(when.get()) ? heldTicks[i] + 1 : 0;
    }
    Optional<Phase> next = open();
    for (int i = 0; i < MOST_MICROSTEPS && next.isPresent(); i++) {
      enter(next.get());
      next = open();
    }
  }

  private Optional<Phase> open() {
    for (int i = 0; i < phase.next().size(); i++) {
      Phase.Transition t = phase.next().get(i);
      if (isDue(t) && isHeld(t, heldTicks[i])) {
        return casualty.phase(t.to());
      }
    }
    return Optional.empty();
  }

  private boolean isDue(Phase.Transition t) {
    return t.afterS().isEmpty()
        || scene.now - enteredTick >= Engine.ticks(t.afterS().get().in(drawn));
  }

  private static boolean isHeld(Phase.Transition t, long held) {
    return t.when().isEmpty() || held > t.when().get().forTicks();
  }

  private void enter(Phase next) {
    phase = next;
    enteredTick = scene.now;
    scene.log(new Entry.PhaseEntered(scene.now, phase.id()));
    Enter enter = new Enter();
    phase.acts().forEach(a -> a.accept(enter));
    heldTicks = new long[phase.next().size()];
    for (int i = 0; i < heldTicks.length; i++) {
      Optional<When> when = phase.next().get(i).when();
      heldTicks[i] = when.isPresent() && facts.holds(when.get()) ? 1 : 0;
    }
  }

  void walk(StateWalker walker) {
    walker.visit("phase", casualty.phases().indexOf(phase));
    walker.visit("phase.entered", enteredTick);
    Arrays.stream(heldTicks).forEach(t -> walker.visit("phase.held", t));
  }

  /** What happens on entering a phase. */
  private final class Enter implements PhaseAct.Visitor {
    @Override
    public void fault(Fault fault) {
      if (fault instanceof Fault.OfMachine machine) {
        facts.truths().fault(machine.id(), machine.aims().get(0).port());
      }
      faults.add(fault);
    }

    @Override
    public void mended(PhaseAct.Mended act) {
      faults.mend(act.fault(), act.overS().in(drawn));
    }

    @Override
    public void cue(PhaseAct.Cue act) {
      boolean isNoticed =
          act.where().equals("everywhere")
              || act.where().equals(scene.traineeAt.id())
              || act.where()
                  .equals(scene.traineeAt.zone().name().toLowerCase(java.util.Locale.ROOT));
      scene.log(new Entry.CueGiven(scene.now, act.id(), isNoticed));
    }

    @Override
    public void outside(PhaseAct.Outside act) {
      long ticks = Engine.ticks(act.overS().in(drawn));
      scene.travels.start(act.port(), scene.plant, act.to(), scene.now, ticks);
    }
  }
}
