package handwheel.plant;

/**
 * Three safety valves: one on the superheater, two on the drum. Each lifts above its set pressure
 * and reseats at a share of it (four per cent blowdown). No continuous state; three flags.
 *
 * <p>Assumes full lift at once and choked flow; one that is stuck stays where it is stuck, until
 * the easing gear lifts it by hand. Left out: chatter, simmer, back pressure.
 *
 * <p>Source: common practice for marine boilers, set pressures invented.
 */
final class SafetyValves {
  private static final Safety[] ALL = Safety.values();
  private static final int STUCK_OPEN = 1;
  private static final int STUCK_SHUT = 2;

  private static final Port[] STUCK = {
    Port.SAFETY_SUPERHEATER_STUCK, Port.SAFETY_DRUM_1_STUCK, Port.SAFETY_DRUM_2_STUCK
  };

  private final Flag[] lifted = {
    new Flag("safety.superheater.lifted"),
    new Flag("safety.drum-1.lifted"),
    new Flag("safety.drum-2.lifted")
  };
  private final double[] setPa;
  private final double[] ratedKgPerS;
  private final double reseatShare;
  private final Positions ports;

  SafetyValves(PlantNumbers numbers, Positions ports) {
    this.ports = ports;
    setPa =
        new double[] {
          numbers.get(PlantNumber.SAFETY_SUPERHEATER_SET),
          numbers.get(PlantNumber.SAFETY_DRUM_1_SET),
          numbers.get(PlantNumber.SAFETY_DRUM_2_SET)
        };
    ratedKgPerS =
        new double[] {
          numbers.get(PlantNumber.SAFETY_SUPERHEATER_FLOW),
          numbers.get(PlantNumber.SAFETY_DRUM_1_FLOW),
          numbers.get(PlantNumber.SAFETY_DRUM_2_FLOW)
        };
    reseatShare = numbers.get(PlantNumber.SAFETY_RESEAT);
  }

  int lifted(Safety valve) {
    return lifted[valve.index()].n;
  }

  /** Flow of the superheater valve for each pascal at its seat, kg/(s Pa). */
  double superheaterConductance(double chokeShare) {
    return conductance(Safety.SUPERHEATER, chokeShare);
  }

  /** Flow of both drum valves, kg/s. */
  double drumKgPerS(double drumPa, double chokeShare) {
    return (conductance(Safety.DRUM_1, chokeShare) + conductance(Safety.DRUM_2, chokeShare))
        * drumPa;
  }

  private double conductance(Safety valve, double chokeShare) {
    int i = valve.index();
    return lifted[i].isSet() ? ratedKgPerS[i] / Physics.RATED_PA * chokeShare : 0;
  }

  void applyRules(double superheaterPa, double drumPa, PlantEvents events) {
    for (Safety valve : ALL) {
      double pa = valve == Safety.SUPERHEATER ? superheaterPa : drumPa;
      apply(valve, pa - Physics.ATMOSPHERE_PA, events);
    }
  }

  private void apply(Safety valve, double gaugePa, PlantEvents events) {
    Flag flag = lifted[valve.index()];
    double set = setPa[valve.index()];
    Port stuck = STUCK[valve.index()];
    boolean isEased = valve != Safety.DRUM_2 && ports.isOn(Port.EASING_GEAR);
    boolean isHeldOpen = isEased || ports.isAt(stuck, STUCK_OPEN);
    boolean isStuckShut = ports.isAt(stuck, STUCK_SHUT);
    if (isHeldOpen || (gaugePa > set && !isStuckShut)) {
      if (!flag.isSet()) {
        flag.set(true);
        events.safetyLifts(valve);
      }
    } else if (flag.isSet() && (isStuckShut || gaugePa < reseatShare * set)) {
      flag.set(false);
      events.safetyReseats(valve);
    }
  }

  void walkFlags(StateWalker walker) {
    for (Flag flag : lifted) {
      flag.walk(walker);
    }
  }
}
