package handwheel.plant;

import handwheel.units.Unit;
import java.util.List;

/**
 * The most exposed generating tubes: they follow the water while they are covered and the gas when
 * they are not.
 *
 * <p>States: metal K, creep damage (1 is failed). Inputs: uncovered share, gas and saturation
 * temperature.
 *
 * <p>Assumes a lag of 25 s on the way up and 12 s down. Left out: a failure's own leak.
 *
 * <p>Source: Larson-Miller with C = 20; lags engineering estimate.
 */
final class GeneratingTubes implements Machine {
  private static final double CREEPS_ABOVE_K = 750;
  private static final double LARSON_MILLER_K = 19_500;

  final State metalK = State.free("tube.temperature");
  final State damage = State.free("tube.damage");

  GeneratingTubes() {
    metalK.decayPerS = 0.04;
  }

  @Override
  public List<State> states() {
    return List.of(metalK, damage);
  }

  @Override
  public List<ModelRange> ranges() {
    return List.of(ModelRange.below("generating tube damage", Unit.ONE, 1, () -> damage.x));
  }

  void evaluate(SteamDrum drum, double gasK) {
    double td = drum.saturationTemperatureK.x;
    double target = td;
    if (drum.dryFraction > 0 || metalK.x > td + 1) {
      double bare = Math.min(4 * drum.dryFraction, 1);
      target = td + bare * 0.75 * (0.25 * td + 0.75 * gasK - td);
    }
    metalK.dx = (target - metalK.x) / (target > metalK.x ? 25 : 12);
    damage.dx = metalK.x > CREEPS_ABOVE_K ? Physics.creepPerS(LARSON_MILLER_K, metalK.x) : 0;
  }
}
