package handwheel.drill;

import handwheel.casualty.Casualty;
import handwheel.logbook.Entry;
import handwheel.logbook.EntrySink;
import handwheel.plant.Plant;
import handwheel.plant.StateWalker;
import handwheel.ship.Condition;
import handwheel.ship.Order;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One run of a drill: a fold over ticks and inputs. The same ship, script, seed and inputs give the
 * same entries on every machine. A tick is: inputs; ports; the plant's evaluation and rules; the
 * crew in roster order; the plant's states; doses; phases; a digest every second.
 *
 * <p>Not safe for use by several threads.
 */
public final class Session {
  private static final int DIGEST_TICKS = 20;

  /** Inputs of one run; nobody says more than one thing in five ticks. */
  private static final int MOST_INPUTS = 5000;

  private final Script script;
  private final Scene scene;
  private final Crew crew;
  private final Facts facts;
  private final Faults faults;
  private final Story story;
  private final Nevers nevers;
  private final Outcomes outcomes;
  private final PlantLog plantLog;
  private final Sight sight;
  private final List<Input> offered = new ArrayList<>();
  private final List<Taken> taken = new ArrayList<>();
  private int orders;
  private boolean isOver;

  /** What a run is made from, so that it can be made again. */
  private record Script(
      Ship ship, Casualty casualty, long seed, Mode mode, Paces paces, boolean isDigested) {
    Script(Ship ship, Casualty casualty, long seed, Mode mode, Paces paces) {
      this(ship, casualty, seed, mode, paces, true);
    }
  }

  /** Opens a session on a sink. */
  interface Opener {
    Session open(EntrySink sink);
  }

  /** An input and the tick it took effect at. */
  private record Taken(long tick, Input input) {}

  private Session(Script script, EntrySink sink) {
    this.script = script;
    Plant plant = plant(script.ship(), script.casualty().start().condition());
    Facts[] held = new Facts[1];
    this.scene =
        new Scene(
            script.ship(),
            plant,
            entry -> {
              held[0].note(entry);
              sink.accept(entry);
            });
    SortedMap<String, Double> drawn = Draws.of(script.casualty(), script.seed());
    this.facts = new Facts(scene, new Truths(scene), drawn);
    held[0] = facts;
    this.crew = new Crew(scene, Draws.crew(script.casualty(), script.seed()), script.paces());
    this.faults = new Faults(scene, drawn);
    this.story = new Story(scene, script.casualty(), drawn, facts, faults);
    this.nevers = new Nevers(scene, script.casualty(), facts);
    this.outcomes = new Outcomes(scene, script.casualty(), facts);
    this.plantLog = new PlantLog(scene);
    this.sight = new Sight(scene, crew, script.casualty());
    open(drawn);
  }

  /**
   * Opens a run. The cautions of the script must have been shown and acknowledged before.
   *
   * @param ship the ship
   * @param casualty the script, without findings that stop the drill
   * @param seed seed of every draw
   * @param mode how it is run
   * @param sink takes the entries
   * @return the session before its first tick
   */
  public static Session open(Ship ship, Casualty casualty, long seed, Mode mode, EntrySink sink) {
    Paces paces = new Paces(seed, Optional.empty());
    return new Session(new Script(ship, casualty, seed, mode, paces), sink);
  }

  static Session open(Rehearsal.Setup setup, EntrySink sink) {
    Paces paces = new Paces(setup.seed(), Optional.empty());
    return new Session(
        new Script(
            setup.ship(), setup.casualty(), setup.seed(), setup.mode(), paces, setup.isDigested()),
        sink);
  }

  /** Opens a run in which everybody has the same pace. */
  static Session open(Ship ship, Casualty casualty, Paces paces, EntrySink sink) {
    return new Session(new Script(ship, casualty, paces.seed(), Mode.PRACTICE, paces), sink);
  }

  private static Plant plant(Ship ship, String conditionId) {
    Condition condition = ship.condition(conditionId).orElseThrow();
    Plant plant = Plant.of(ship.numbers());
    SortedMap<String, Double> ports = new TreeMap<>();
    condition.ports().forEach((port, at) -> ports.put(port.id(), at));
    plant.restore(condition.states(), ports);
    return plant;
  }

  private void open(SortedMap<String, Double> drawn) {
    Casualty c = script.casualty();
    scene.log(
        new Entry.Run(
            1,
            Engine.VERSION,
            script.ship().id(),
            script.ship().sha256(),
            c.id(),
            c.sha256(),
            script.seed(),
            script.mode().word()));
    drawn.forEach(
        (name, si) -> scene.log(new Entry.Drawn(name, (long) StrictMath.floor(si * 1e9))));
    c.cautions().forEach(caution -> scene.log(new Entry.CautionShown(caution.id())));
    scene.plant.evaluate();
    scene.instruments.settle(scene.plant);
    story.start();
  }

  /**
   * Offers an input; it takes effect at the coming tick. A run takes at most 5000 inputs; what
   * comes after them is passed over.
   *
   * @param input the input
   */
  public void offer(Input input) {
    if (taken.size() + offered.size() < MOST_INPUTS) {
      offered.add(input);
    }
  }

  /**
   * Does one tick.
   *
   * @return false when the drill is over and no tick was done
   */
  public boolean tick() {
    if (isOver) {
      return false;
    }
    takeInputs();
    faults.tick();
    scene.travels.apply(scene.plant, scene.now);
    scene.plant.evaluate();
    scene.plant.applyRules(plantLog);
    scene.instruments.tick(scene.plant, scene.now);
    scene.listen();
    crew.tick();
    nevers.tick(crew.people());
    outcomes.tick();
    scene.plant.advance();
    crew.breathe();
    story.tick();
    if ((scene.now + 1) % DIGEST_TICKS == 0) {
      logState();
    }
    scene.now++;
    isOver |= story.isOver() || isAtLimit() || crew.supervisor().isDown();
    return true;
  }

  private boolean isAtLimit() {
    return scene.now >= script.casualty().limitTicks();
  }

  private void takeInputs() {
    Inputs inputs = new Inputs();
    for (Input input : List.copyOf(offered)) {
      taken.add(new Taken(scene.now, input));
      inputs.take(input);
    }
    offered.clear();
  }

  private void logState() {
    if (!scene.plant.isFinite()) {
      throw new IllegalStateException("a state of the plant is no number at tick " + scene.now);
    }
    String hash = script.isDigested() ? hash() : "";
    scene.log(new Entry.State(scene.now, hash, scene.instruments.changed()));
  }

  private String hash() {
    StateDigest digest = new StateDigest();
    walk(digest);
    return digest.hex();
  }

  private void walk(StateWalker walker) {
    scene.plant.walk(walker);
    scene.travels.walk(walker);
    faults.walk(walker);
    scene.troubles.walk(walker);
    scene.instruments.walk(walker);
    crew.walk(walker);
    story.walk(walker);
    nevers.walk(walker);
    outcomes.walk(walker);
  }

  /**
   * Returns the coming tick.
   *
   * @return ticks since the start
   */
  public long now() {
    return scene.now;
  }

  /**
   * Returns whether the drill is over.
   *
   * @return true when {@link #tick} does nothing any more
   */
  public boolean isOver() {
    return isOver;
  }

  /**
   * Returns what the trainee may know from where he stands. The same object every time; read it
   * before the next tick.
   *
   * @return the sight
   */
  public Sight sight() {
    return sight;
  }

  /**
   * Returns an independent session in the same state, made by doing the same inputs again.
   *
   * @param sink takes the entries from now on
   * @return the copy
   */
  public Session copy(EntrySink sink) {
    boolean[] isLive = new boolean[1];
    EntrySink later =
        entry -> {
          if (isLive[0]) {
            sink.accept(entry);
          }
        };
    Session copy = new Session(script, later);
    int next = 0;
    while (copy.scene.now < scene.now) {
      while (next < taken.size() && taken.get(next).tick() == copy.scene.now) {
        copy.offer(taken.get(next).input());
        next++;
      }
      copy.tick();
    }
    offered.forEach(copy::offer);
    isLive[0] = true;
    return copy;
  }

  /**
   * Returns a digest of the whole state.
   *
   * @return SHA-256, lower-case hex
   */
  public String digest() {
    StateDigest digest = new StateDigest();
    walk(digest);
    return digest.hex();
  }

  /**
   * Returns a true value, for a trace; a trainee never sees it.
   *
   * @param quantity which
   * @return SI
   */
  public double truth(handwheel.plant.Quantity quantity) {
    return scene.plant.value(quantity);
  }

  /** Takes inputs in their order of arrival. */
  private final class Inputs {
    void take(Input input) {
      if (input instanceof Input.Said s) {
        said(s.order(), s.firstKeyTick());
      } else if (input instanceof Input.Acknowledged) {
        scene.log(new Entry.Acknowledged(scene.now));
        crew.acknowledged();
      } else if (input instanceof Input.Stopped) {
        scene.log(new Entry.Stopped(scene.now));
      } else if (input instanceof Input.Resumed) {
        scene.log(new Entry.Resumed(scene.now));
      } else if (input instanceof Input.Ended e) {
        scene.log(new Entry.Ended(scene.now, e.why()));
        isOver = true;
      }
    }

    private void said(Order order, long firstKeyTick) {
      orders++;
      Optional<Person> person = Addressed.who(order).flatMap(crew::find);
      Job probe = new Job(orders, order, true, false, scene.now);
      Optional<Goal> goal = person.flatMap(p -> Goal.meant(scene, p, probe));
      long from = Math.min(firstKeyTick, scene.now);
      scene.log(
          new Entry.OrderSaid(
              scene.now,
              from,
              orders,
              order.text(),
              goal.map(Goal::needTicks).orElse(-1L),
              goal.map(g -> scene.hurtTicks(g.place())).orElse(Entry.NO_HURT_TICKS),
              goal.map(g -> scene.isInJet(g.place())).orElse(false)));
      goal.filter(g -> !g.place().isInside())
          .flatMap(g -> crew.soonestInside(probe))
          .ifPresent(scene::log);
      person.ifPresent(p -> nevers.said(order, orders, p, goal));
      crew.hear(order, orders);
    }
  }
}
