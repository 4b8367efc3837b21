package handwheel.drill;

import handwheel.casualty.Fault;
import handwheel.logbook.Entry;
import handwheel.plant.Port;
import handwheel.plant.StateWalker;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedMap;

/** The faults of a run: those that wait, those that are there, those that go by themselves. */
final class Faults {
  private final Scene scene;
  private final SortedMap<String, Double> drawn;
  private final List<Present> all = new ArrayList<>();

  /** A fault from the moment the script speaks of it. */
  private static final class Present {
    final Fault fault;
    final long fromTick;
    OptionalLong endTick = OptionalLong.empty();

    /** Where the ports of a machine's fault stood before, in the order of its aims. */
    final List<Double> before = new ArrayList<>();

    boolean isThere;

    Present(Fault fault, long fromTick) {
      this.fault = fault;
      this.fromTick = fromTick;
    }
  }

  Faults(Scene scene, SortedMap<String, Double> drawn) {
    this.scene = scene;
    this.drawn = drawn;
  }

  /** Takes a fault up; without a delay it sets in at once. */
  void add(Fault fault) {
    long fromTick = scene.now + Engine.ticks(fault.course().afterS().in(drawn));
    Present present = new Present(fault, fromTick);
    all.add(present);
    if (fromTick <= scene.now) {
      setIn(present);
    }
  }

  /** Takes a fault away; one that was not there yet never comes. */
  void mend(String id, double overS) {
    Iterator<Present> each = all.iterator();
    while (each.hasNext()) {
      Present present = each.next();
      if (present.fault.id().equals(id)) {
        each.remove();
        if (present.isThere) {
          present.fault.accept(new Ends(present, Engine.ticks(overS)));
          log(present, "ends");
        }
      }
    }
  }

  /** Lets faults set in and go that are due at this tick. */
  void tick() {
    for (int i = 0; i < all.size(); i++) {
      Present present = all.get(i);
      if (!present.isThere && scene.now >= present.fromTick) {
        setIn(present);
      }
    }
    for (int i = all.size() - 1; i >= 0; i--) {
      OptionalLong end = all.get(i).endTick;
      if (end.isPresent() && scene.now >= end.getAsLong()) {
        mend(all.get(i).fault.id(), 0);
      }
    }
  }

  private void setIn(Present present) {
    present.isThere = true;
    present.fault.accept(new Begins(present));
    Optional<Double> lastsS = present.fault.course().lastsS().map(a -> a.in(drawn));
    lastsS.ifPresent(s -> present.endTick = OptionalLong.of(scene.now + Engine.ticks(s)));
    log(present, "begins");
  }

  private void log(Present present, String word) {
    String what = "fault " + present.fault.id() + " " + word;
    scene.log(new Entry.PlantEvent(scene.now, what));
  }

  private long rampTicks(Fault fault) {
    return Engine.ticks(fault.course().rampS().in(drawn));
  }

  void walk(StateWalker walker) {
    for (Present present : all) {
      String name = "fault." + present.fault.id();
      walker.visit(name + ".from", present.fromTick);
      walker.visit(name + ".there", present.isThere ? 1 : 0);
      walker.visit(name + ".end", present.endTick.orElse(-1));
    }
  }

  private static boolean isGradual(Port port) {
    return port.kind() == Port.Kind.FRACTION || port.kind() == Port.Kind.SETTING;
  }

  private void send(Port port, double to, long ticks) {
    scene.travels.start(port, scene.plant, to, scene.now, isGradual(port) ? ticks : 0);
  }

  /** What a fault does when it sets in. */
  private final class Begins implements Fault.Visitor {
    private final Present present;

    Begins(Present present) {
      this.present = present;
    }

    @Override
    public void machine(Fault.OfMachine fault) {
      for (Fault.Aim aim : fault.aims()) {
        present.before.add(scene.plant.position(aim.port()));
        send(aim.port(), aim.position(aim.size().in(drawn)), rampTicks(fault));
      }
    }

    @Override
    public void fitting(Fault.OfFitting fault) {
      scene.troubles.add(fault, scene);
    }

    @Override
    public void gear(Fault.OfGear fault) {
      scene.troubles.add(fault);
    }

    @Override
    public void gauge(Fault.OfGauge fault) {
      scene.instruments.bend(fault, scene.now, rampTicks(fault));
    }
  }

  /** What a fault does when it goes. */
  private final class Ends implements Fault.Visitor {
    private final Present present;
    private final long ticks;

    Ends(Present present, long ticks) {
      this.present = present;
      this.ticks = ticks;
    }

    @Override
    public void machine(Fault.OfMachine fault) {
      for (int i = 0; i < fault.aims().size(); i++) {
        send(fault.aims().get(i).port(), present.before.get(i), ticks);
      }
    }

    @Override
    public void fitting(Fault.OfFitting fault) {
      scene.troubles.remove(fault, scene);
    }

    @Override
    public void gear(Fault.OfGear fault) {
      scene.troubles.remove(fault);
    }

    @Override
    public void gauge(Fault.OfGauge fault) {
      scene.instruments.mend(fault.gauge());
    }
  }
}
