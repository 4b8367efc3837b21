package handwheel.plant.outside;

import com.hummeling.if97.IF97;
import handwheel.units.Unit;
import handwheel.water.Saturation;
import handwheel.water.SaturationTable;
import handwheel.water.SuperheatedSteam;
import java.util.ArrayList;
import java.util.List;

/** The plant's steam tables beside IAPWS-IF97 in an independent implementation. */
final class SteamCheck {
  static final String TABLE = "saturation table";
  static final String SUPERHEAT = "superheated steam";
  private static final IF97 STEAM = new IF97(IF97.UnitSystem.SI);
  private static final double BTU_PER_LB = 2326;

  /**
   * Handbook rows at the pressures of the plant: psig, F, water and steam Btu/lb, water and steam
   * kg/m3. Computed from IAPWS-IF97; older printed tables agree within 0.1 F.
   */
  private static final double[][] ROWS = {
    {0, 211.954, 180.13, 1150.27, 958.373, 0.5976},
    {15, 249.718, 218.33, 1163.94, 942.334, 1.1541},
    {50, 297.651, 267.34, 1179.27, 919.250, 2.3961},
    {100, 337.882, 309.08, 1189.95, 897.522, 4.1156},
    {150, 365.872, 338.55, 1195.97, 881.075, 5.8100},
    {300, 421.775, 398.84, 1203.77, 844.615, 10.8769},
    {600, 488.859, 474.76, 1203.63, 793.170, 21.3259},
    {615, 491.475, 477.83, 1203.36, 790.957, 21.8659},
    {640, 495.731, 482.84, 1202.88, 787.318, 22.7702},
    {700, 505.460, 494.39, 1201.56, 778.816, 24.9638}
  };

  /** Superheated: psig, F, Btu/lb; computed from IAPWS-IF97. */
  private static final double[][] SUPERHEATED = {
    {600, 700, 1350.10},
    {600, 800, 1407.24},
    {600, 850, 1435.09},
    {615, 850, 1434.48},
    {150, 500, 1272.80}
  };

  private SteamCheck() {}

  static List<Figure> figures() {
    List<Figure> figures = new ArrayList<>();
    SaturationTable table = SaturationTable.standard();
    for (double[] row : ROWS) {
      handbook(table, row, figures);
    }
    library(table, figures);
    for (double[] row : SUPERHEATED) {
      double found =
          SuperheatedSteam.enthalpyJPerKg(
              Unit.PSIG.toSi(row[0]) + 101_325, Unit.FAHRENHEIT.toSi(row[1]));
      String what = (int) row[0] + " psig " + (int) row[1] + " F, Btu/lb";
      figures.add(new Figure(SUPERHEAT, what, found / BTU_PER_LB, row[2], 0.34));
    }
    figures.add(
        new Figure(SUPERHEAT, "worst of 0.01-5 MPa to 950 K, kJ/kg", worstSuperheat(), 0, 0.8));
    return figures;
  }

  /** Boiling temperature by the standard itself, K. */
  static double boilingK(double pressurePa) {
    return STEAM.saturationTemperatureP(pressurePa);
  }

  private static void handbook(SaturationTable table, double[] row, List<Figure> figures) {
    Saturation s = new Saturation();
    double pa = Unit.PSIG.toSi(row[0]) + 101_325;
    double kelvin = Unit.FAHRENHEIT.toSi(row[1]);
    for (int i = 0; i < 3; i++) {
      table.at(kelvin, s);
      kelvin += (pa - s.pressurePa) / s.pressureSlopePaPerK;
    }
    String at = (int) row[0] + " psig, ";
    figures.add(new Figure(TABLE, at + "F", Unit.FAHRENHEIT.fromSi(kelvin), row[1], 0.001));
    double[] found = {
      s.waterEnthalpyJPerKg / BTU_PER_LB,
      s.steamEnthalpyJPerKg / BTU_PER_LB,
      s.waterDensityKgPerM3,
      s.steamDensityKgPerM3
    };
    String[] what = {"water Btu/lb", "steam Btu/lb", "water kg/m3", "steam kg/m3"};
    double[] printed = {0.006, 0.006, 0.0015, 0.00015};
    for (int i = 0; i < found.length; i++) {
      figures.add(new Figure(TABLE, at + what[i], found[i], row[i + 2], printed[i]));
    }
  }

  private static void library(SaturationTable table, List<Figure> figures) {
    Saturation s = new Saturation();
    double[] worst = new double[5];
    for (double t = 281.3; t < 599; t += 0.37) {
      table.at(t, s);
      double[] found = {
        s.pressurePa / STEAM.saturationPressureT(t),
        s.waterEnthalpyJPerKg / STEAM.specificEnthalpySaturatedLiquidT(t),
        s.steamEnthalpyJPerKg / STEAM.specificEnthalpySaturatedVapourT(t),
        s.waterDensityKgPerM3 * STEAM.specificVolumeSaturatedLiquidT(t),
        s.steamDensityKgPerM3 * STEAM.specificVolumeSaturatedVapourT(t)
      };
      for (int i = 0; i < worst.length; i++) {
        worst[i] = Math.max(worst[i], Math.abs(found[i] - 1));
      }
    }
    String[] names = {
      "pressure", "water enthalpy", "steam enthalpy", "water density", "steam density"
    };
    for (int i = 0; i < worst.length; i++) {
      figures.add(
          new Figure(TABLE, "worst of 281-599 K, " + names[i] + ", 1e-6", 1e6 * worst[i], 0, 0.5));
    }
  }

  private static double worstSuperheat() {
    double worst = 0;
    for (double p : new double[] {1e4, 1e5, 1e6, 2e6, 4.238e6, 5e6}) {
      for (double t = boilingK(p) + 1; t <= 950; t += 7) {
        double error = SuperheatedSteam.enthalpyJPerKg(p, t) - STEAM.specificEnthalpyPT(p, t);
        worst = Math.max(worst, Math.abs(error) / 1000);
      }
    }
    return worst;
  }
}
