package handwheel.plant;

import java.util.List;

/**
 * Smoke at the stack: two indices from 0 to 1. Below 0.05 clear, to 0.2 light haze, to 0.6 dark or
 * white, above heavy.
 *
 * <p>States: black index, white index. Assumes black from lack of air and bad atomizing, white from
 * excess air, water, oil not burning, and water from a holed economizer. Not Ringelmann numbers.
 *
 * <p>Source: engineering estimate.
 */
final class Smoke implements Machine {
  private static final double LAG_S = 1.5;

  /** Soot burning in the uptake that blackens the stack, kg/s. */
  private static final double DARK_SOOT_KG_PER_S = 0.05;

  final State black = State.dying("stack.black");
  final State white = State.dying("stack.white");

  @Override
  public List<State> states() {
    return List.of(black, white);
  }

  void evaluate(
      BurnerFront front,
      Furnace saturated,
      Furnace superheater,
      double sootKgPerS,
      double economizerLeakKgPerS) {
    double oil = front.totalKgPerS;
    double flames = oil <= 1e-4 ? 0 : front.blackKgPerS / Math.max(oil, 1e-6);
    double dark = Curve.clip(flames + sootKgPerS / DARK_SOOT_KG_PER_S, 0, 1);
    double vapour = 0.3 * saturated.vapourOutKgPerS + 0.3 * superheater.vapourOutKgPerS;
    double paleKgPerS = front.whiteKgPerS + vapour + 0.5 * economizerLeakKgPerS;
    double pale = Curve.clip(paleKgPerS / Math.max(oil, 0.05), 0, 1);
    black.dx = (dark - black.x) / LAG_S;
    white.dx = (pale - white.x) / LAG_S;
  }
}
