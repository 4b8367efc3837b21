package handwheel.water;

/**
 * Enthalpy of superheated steam, a polynomial in reduced temperature and pressure.
 *
 * <p>Range 0.01 to 5 MPa, up to 950 K. Fitted to IAPWS-IF97 (IAPWS R7-97) within 0.8 kJ/kg over
 * that range.
 */
public final class SuperheatedSteam {
  private SuperheatedSteam() {}

  /**
   * Returns the enthalpy of superheated steam.
   *
   * @param pressurePa absolute pressure, 1e4 to 5e6 Pa
   * @param temperatureK temperature, above saturation and up to 950 K
   * @return enthalpy, J/kg
   */
  public static double enthalpyJPerKg(double pressurePa, double temperatureK) {
    double t = temperatureK / 500.0; // reduced temperature
    double q = pressurePa / 1e6; // reduced pressure
    double i = 1 / (t * t);
    double i2 = i * i;
    double i4 = i2 * i2;
    double ideal = 2014.892523 + t * (867.8288769 + t * (39.14782553 + t * 10.60521873));
    double first = -17.43178423 * i - 17.65846946 * i2 - 3.771543931 * i4;
    double second = -1.483699345 * i2 * i - 0.1370598506 * i4 * i;
    double third = 0.1836265107 * i4 * i2 - 1.049622766 * i4 * i4;
    return 1000 * (ideal + q * (first + q * (second + q * third)));
  }
}
