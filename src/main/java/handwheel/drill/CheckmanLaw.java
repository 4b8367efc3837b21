package handwheel.drill;

import handwheel.plant.Plant;
import handwheel.plant.Port;
import handwheel.plant.Quantity;
import handwheel.plant.StateWalker;
import java.util.function.ToDoubleFunction;

/**
 * The checkman at the feed check. At fixed intervals he reads the glass to a tenth of an inch,
 * judges the trend over his last looks and decides on an opening; his hand follows. A drilled man
 * also keeps to the opening he remembers for the ordered throttle.
 *
 * <p>Memory: opening for the throttle, opening found beyond it, trim, wanted opening, last four
 * readings. A law without memory of its valve begins anew with {@link #takeOver}.
 */
final class CheckmanLaw {
  private static final double GLASS_IN = 7;
  private static final double INCH_M = 0.0254;
  private static final double TRIM_MAX = 0.3;
  private static final int LOOKS = 4;

  /** Openings a drilled man remembers, throttle then check. */
  private static final double[] THROTTLE = {0, 0.225, 0.5, 1};

  private static final double[] CHECK = {0.02637, 0.105478, 0.206699, 0.436772};

  private static final String[] READING = {
    "checkman.reading.1", "checkman.reading.2", "checkman.reading.3", "checkman.reading.4"
  };

  private final CheckmanSkill skill;
  private final double[] readingsIn = new double[LOOKS];
  private double looks;
  private double ticks;
  private double remembered;
  private double base;
  private double trim;
  private double want;

  CheckmanLaw(CheckmanSkill skill) {
    this.skill = skill;
  }

  /** Begins from the opening he finds. */
  void takeOver(Plant plant) {
    looks = 0;
    ticks = 0;
    trim = 0;
    want = plant.position(Port.FEED_CHECK);
    remembered = skill.answersThrottle() ? forThrottle(plant) : 0;
    base = want - remembered;
  }

  private static double forThrottle(Plant plant) {
    double throttle = plant.position(Port.THROTTLE_ORDERED);
    int i = throttle < THROTTLE[1] ? 0 : throttle < THROTTLE[2] ? 1 : 2;
    double share = (throttle - THROTTLE[i]) / (THROTTLE[i + 1] - THROTTLE[i]);
    return CHECK[i] + (CHECK[i + 1] - CHECK[i]) * share;
  }

  void tick(Plant plant, ToDoubleFunction<Quantity> eyes) {
    if (skill.answersThrottle()) {
      remembered = Math.max(forThrottle(plant), remembered - skill.easePerS() * Plant.TICK_S);
    }
    if (ticks % skill.lookTicks() == 0) {
      look(eyes.applyAsDouble(Quantity.DRUM_LEVEL) / INCH_M);
    }
    ticks++;
    double hand = Hand.toward(plant.position(Port.FEED_CHECK), want, skill.ratePerS());
    plant.set(Port.FEED_CHECK, hand);
  }

  private void look(double levelIn) {
    double z = Math.floor(10 * Hand.clip(levelIn, -GLASS_IN, GLASS_IN) + 0.5) / 10;
    remember(z);
    int intervals = (int) Math.min(looks, LOOKS) - 1;
    double trendInPerS =
        intervals == 0 ? 0 : (z - readingsIn[intervals]) / (skill.lookS() * intervals);
    double error = beyondDeadBand(-(z + skill.anticipationS() * trendInPerS));
    trim = Hand.clip(trim + skill.trimPerInS() * error * skill.lookS(), -TRIM_MAX, TRIM_MAX);
    want = Hand.clip(remembered + base + trim + skill.gainPerIn() * error, 0, 1);
  }

  /** Keeps the newest reading first. */
  private void remember(double z) {
    for (int i = LOOKS - 1; i > 0; i--) {
      readingsIn[i] = readingsIn[i - 1];
    }
    readingsIn[0] = z;
    looks++;
  }

  private double beyondDeadBand(double error) {
    double band = skill.deadBandIn();
    if (Math.abs(error) <= band) {
      return 0;
    }
    return error > 0 ? error - band : error + band;
  }

  void walk(StateWalker walker) {
    looks = walker.visit("checkman.looks", looks);
    ticks = walker.visit("checkman.ticks", ticks);
    remembered = walker.visit("checkman.remembered", remembered);
    base = walker.visit("checkman.base", base);
    trim = walker.visit("checkman.trim", trim);
    want = walker.visit("checkman.want", want);
    for (int i = 0; i < LOOKS; i++) {
      readingsIn[i] = walker.visit(READING[i], readingsIn[i]);
    }
  }
}
