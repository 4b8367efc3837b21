package handwheel.plant.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

/** The formulas the fire side is held to, against published rows and each other. */
class CombustionTest {
  /**
   * Residual oil 13.73, naval distillate 14.40 kg of air for each kg; computed from typical oils.
   */
  @Test
  void theAirAnOilNeeds() {
    assertThat(Combustion.airForOil(0.865, 0.108, 0.004, 0.02)).isCloseTo(13.73, within(0.01));
    assertThat(Combustion.airForDistillate()).isCloseTo(14.40, within(0.01));
    assertThat(Combustion.airForDistillateByMoles()).isCloseTo(14.40, withPercentage(0.2));
  }

  /** Distillates of 845 and 876 kg/m3: 42.69 and 42.12 MJ/kg net, computed. */
  @Test
  void theHeatOfAnOil() {
    assertThat(Combustion.netHeat(845, 0.004)).isCloseTo(42.69, within(0.01));
    assertThat(Combustion.netHeat(876, 0.01)).isCloseTo(42.12, within(0.01));
  }

  /** Siegert: 180/30 C at 3 % 6.7, at 6 % 7.9; 250/30 at 3 % 9.9, at 10 % 15.1; computed. */
  @Test
  void theStackLoss() {
    assertThat(Combustion.stackLossPercent(180, 30, 3)).isCloseTo(6.7, within(0.05));
    assertThat(Combustion.stackLossPercent(180, 30, 6)).isCloseTo(7.9, within(0.05));
    assertThat(Combustion.stackLossPercent(250, 30, 3)).isCloseTo(9.9, within(0.05));
    assertThat(Combustion.stackLossPercent(250, 30, 10)).isCloseTo(15.1, within(0.05));
  }

  /** 15 % excess air: 2.89 % oxygen by counting moles; the short formula reads 6 % of it high. */
  @Test
  void oxygenAndExcessAir() {
    assertThat(Combustion.oxygenPercent(0.15)).isCloseTo(2.89, withPercentage(6));
  }

  /** Rows of the JANAF tables at 1000 and 2000 K, kJ/mol above 298 K, from memory. */
  @Test
  void theEnthalpyOfGases() {
    assertThat(FlueGas.carbonDioxide(1000)).isCloseTo(33.40, withPercentage(0.3));
    assertThat(FlueGas.carbonDioxide(2000)).isCloseTo(91.44, withPercentage(0.3));
    assertThat(FlueGas.steam(1000)).isCloseTo(26.00, withPercentage(0.3));
    assertThat(FlueGas.steam(2000)).isCloseTo(72.79, withPercentage(0.3));
    assertThat(FlueGas.nitrogen(1000)).isCloseTo(21.46, withPercentage(0.3));
    assertThat(FlueGas.nitrogen(2000)).isCloseTo(56.14, withPercentage(0.3));
    assertThat(FlueGas.oxygen(1000)).isCloseTo(22.70, withPercentage(0.3));
    assertThat(FlueGas.oxygen(2000)).isCloseTo(59.18, withPercentage(0.3));
  }

  /** A flame of light oil in its own air, without dissociation: about 2,400 K, from memory. */
  @Test
  void theHottestFlame() {
    assertThat(FlueGas.adiabaticK(1, 42.69e6)).isCloseTo(2_400, withPercentage(2.5));
  }
}
