package handwheel.plant;

/** Tells once when a damage or dose reaches 1. */
final class Latches {
  private final Flag superheater = new Flag("latch.superheater-damage");
  private final Flag tubes = new Flag("latch.tube-damage");
  private final Flag upper = new Flag("latch.upper-dose");
  private final Flag lower = new Flag("latch.lower-dose");

  void applyRules(
      Superheater superheaterTubes, GeneratingTubes exposed, FireRoom room, PlantEvents events) {
    latch(superheater, superheaterTubes.damage.x, Limit.SUPERHEATER_DAMAGE, events);
    latch(tubes, exposed.damage.x, Limit.TUBE_DAMAGE, events);
    latch(upper, room.upper.dose.x, Limit.UPPER_DOSE, events);
    latch(lower, room.lower.dose.x, Limit.LOWER_DOSE, events);
  }

  private static void latch(Flag flag, double value, Limit limit, PlantEvents events) {
    if (!flag.isSet() && value >= 1) {
      flag.set(true);
      events.limitReached(limit);
    }
  }

  void walkFlags(StateWalker walker) {
    superheater.walk(walker);
    tubes.walk(walker);
    upper.walk(walker);
    lower.walk(walker);
  }
}
