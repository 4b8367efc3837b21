package handwheel.plant;

import handwheel.units.Unit;
import java.util.List;

/**
 * Water in the bilge. State: volume m3; water flowing in is positive. Assumes a flat bilge and
 * eductors that lose suction below 0.05 m. Left out: list, trim, what the water wets.
 *
 * <p>Source: engineering estimate.
 */
final class Bilge implements Machine {
  private static final double LOSES_SUCTION_M = 0.05;

  /** Here the water reaches the furnace bottoms, which is not modelled, m (3.3 ft). */
  private static final double FURNACE_BOTTOMS_M = 1.0;

  final State waterM3 = State.atLeast(0, "bilge.volume");

  private final Positions ports;
  private final double areaM2;
  private final double eductorM3PerS;

  Bilge(PlantNumbers numbers, Positions ports) {
    this.ports = ports;
    areaM2 = numbers.get(PlantNumber.BILGE_AREA);
    eductorM3PerS = numbers.get(PlantNumber.BILGE_EDUCTOR);
  }

  @Override
  public List<State> states() {
    return List.of(waterM3);
  }

  @Override
  public List<ModelRange> ranges() {
    return List.of(ModelRange.below("bilge depth", Unit.FOOT, FURNACE_BOTTOMS_M, this::depthM));
  }

  void evaluate(double blowerWaterKgPerS) {
    double pumped = depthM() > LOSES_SUCTION_M ? eductorM3PerS * ports.at(Port.EDUCTORS) : 0;
    waterM3.dx = ports.at(Port.FLOODING) + blowerWaterKgPerS / 1000 - pumped;
  }

  double depthM() {
    return waterM3.x / areaM2;
  }
}
