package handwheel.drill;

import handwheel.casualty.Casualty;
import handwheel.casualty.Phase;
import handwheel.casualty.PhaseAct;
import handwheel.plant.Quantity;
import handwheel.ship.Gauge;
import handwheel.ship.Order;
import handwheel.ship.Place;
import handwheel.ship.Watchstander;
import java.util.List;

/**
 * What the trainee may know from where he stands: the clock, the gauges before his eyes, the people
 * he can see, how the air feels. Nothing of the truth behind it.
 */
public final class Sight {
  private static final double WARM_RATE = 0.0005;
  private static final double BURNING_RATE = 0.003;

  private final Scene scene;
  private final Crew crew;
  private final Casualty casualty;

  Sight(Scene scene, Crew crew, Casualty casualty) {
    this.scene = scene;
    this.crew = crew;
    this.casualty = casualty;
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
   * Returns where the trainee stands.
   *
   * @return the place he was at last
   */
  public Place place() {
    return crew.supervisor().legs.at();
  }

  /**
   * Returns whether the trainee is on his way somewhere.
   *
   * @return true while he walks
   */
  public boolean isWalking() {
    return crew.supervisor().legs.isWalking();
  }

  /**
   * Returns the gauges that can be read from where he stands.
   *
   * @return gauges in the ship file's order
   */
  public List<Gauge> gauges() {
    String here = place().id();
    return scene.ship.gauges().stream().filter(g -> g.at().contains(here)).toList();
  }

  /**
   * Returns what a gauge shows.
   *
   * @param gauge one of {@link #gauges}
   * @return figure in the gauge's unit, within its scale
   */
  public double shown(Gauge gauge) {
    return scene.instruments.shown(scene.instruments.index(gauge.id()));
  }

  /**
   * Returns whether he can see a person.
   *
   * @param who station id
   * @return true if both stand in the same zone, or, outside, at the same place
   */
  public boolean sees(String who) {
    Place his = crew.person(who).legs.at();
    boolean isSameZone = his.zone() == place().zone();
    return place().isInside() ? isSameZone : his.equals(place());
  }

  /**
   * Returns the watch in roster order.
   *
   * @return everybody, seen or not
   */
  public List<Watchstander> watch() {
    return scene.ship.watch();
  }

  /**
   * Returns where a person is seen to be.
   *
   * @param who station id; must be seen
   * @return the place he was at last
   */
  public Place placeOf(String who) {
    return crew.person(who).legs.at();
  }

  /**
   * Returns what a person is seen to be doing.
   *
   * @param who station id; must be seen
   * @return a few words
   */
  public String doing(String who) {
    Person p = crew.person(who);
    if (p.isDown()) {
      return "down";
    }
    String hurt = p.isHurt() ? "hurt, " : "";
    return hurt + deed(p);
  }

  private static String deed(Person p) {
    Job job = p.job;
    if (job == null) {
      return "standing by";
    }
    if (job.stage == Job.Stage.WALKING) {
      return "on his way";
    }
    return job.order instanceof Order.Work w && job.stage == Job.Stage.WORKING
        ? w.verb().word() + " " + w.fittings().get(job.fitting)
        : "heard you";
  }

  /**
   * Returns how the air feels where he stands.
   *
   * @return a few words; empty when there is nothing to feel
   */
  public String air() {
    double rate = scene.doseRatePerS(place());
    if (rate > BURNING_RATE) {
      return "The air burns.";
    }
    if (rate <= WARM_RATE) {
      return "";
    }
    return scene.plant.value(Quantity.FIRE_BURNING) > 0 ? "Hot and smoky." : "Hot and wet.";
  }

  /**
   * Returns whether a roar drowns every voice where he stands.
   *
   * @return true in the fire room while steam escapes
   */
  public boolean isRoaring() {
    return place().isInside() && scene.isRoaring();
  }

  /**
   * Returns the words of a cue.
   *
   * @param cue id of the cue
   * @return its text
   */
  public String cueText(String cue) {
    for (Phase phase : casualty.phases()) {
      for (PhaseAct act : phase.acts()) {
        if (act instanceof PhaseAct.Cue c && c.id().equals(cue)) {
          return c.text();
        }
      }
    }
    return cue;
  }
}
