package handwheel.plant;

/**
 * An ignition of oil vapour collected in a furnace.
 *
 * @param side the furnace
 * @param severity how bad
 * @param overpressurePa pressure rise, Pa
 * @param equivalenceRatio vapour over what the air could burn, before burning
 * @param vapourKg vapour in the furnace before burning, kg
 */
public record FurnaceExplosion(
    Side side, Severity severity, double overpressurePa, double equivalenceRatio, double vapourKg) {

  /** Classes of furnace explosion, mildest first. */
  public enum Severity {
    /** Below 2 kPa: a puff. */
    PUFF,
    /** Below 7.5 kPa: flame out of the front, injury to whoever stands there. */
    FLAREBACK,
    /** Below 20 kPa: the casing gives. */
    CASING_DAMAGE,
    /** The boiler is wrecked; the drill ends. */
    DESTRUCTIVE;

    static Severity of(double overpressurePa) {
      if (overpressurePa < 2_000) {
        return PUFF;
      }
      if (overpressurePa < 7_500) {
        return FLAREBACK;
      }
      return overpressurePa < 20_000 ? CASING_DAMAGE : DESTRUCTIVE;
    }
  }
}
