package handwheel.water;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/**
 * Saturated water and steam against temperature: cubic splines (not-a-knot) through nodes one
 * kelvin apart, 280 to 600 K. Outside the nodes the end pieces go on. The slopes are those of the
 * spline pieces themselves, so that mass and energy stay conserved in whatever integrates them.
 *
 * <p>Nodes computed with IAPWS-IF97 (IAPWS R7-97). Worst error of the splines against it about 2e-7
 * of the value.
 */
public final class SaturationTable {
  private static final int PROPERTIES = 5;
  private static final int CUBIC = 4;
  private static final int PIECE = PROPERTIES * CUBIC;

  private final double firstK;
  private final int pieces;

  /** Coefficients, [piece][property][power 0 to 3], flat. */
  private final double[] coefficients;

  private SaturationTable(double firstK, int pieces, double[] coefficients) {
    this.firstK = firstK;
    this.pieces = pieces;
    this.coefficients = coefficients;
  }

  /**
   * Reads the table that comes with the program.
   *
   * @return the table
   */
  public static SaturationTable standard() {
    InputStream in =
        Objects.requireNonNull(SaturationTable.class.getResourceAsStream("saturation.csv"));
    try (Reader reader = new InputStreamReader(in, StandardCharsets.US_ASCII)) {
      return read(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Reads a table: a line of column names, then temperature [K], pressure [Pa], enthalpies of water
   * and steam [J/kg], densities of water and steam [kg/m3], one kelvin apart.
   *
   * @param reader the text
   * @return the table
   * @throws IOException if the text cannot be read
   * @throws IllegalArgumentException if there are fewer than four lines or the steps are not 1 K
   */
  public static SaturationTable read(Reader reader) throws IOException {
    List<double[]> rows = new BufferedReader(reader).lines().skip(1).map(Row::of).toList();
    requireKelvinSteps(rows);
    int pieces = rows.size() - 1;
    double[] coefficients = new double[pieces * PIECE];
    for (int property = 0; property < PROPERTIES; property++) {
      int column = property + 1;
      double[] nodes = rows.stream().mapToDouble(r -> r[column]).toArray();
      NotAKnotSpline.fill(nodes, coefficients, property * CUBIC, PIECE);
    }
    return new SaturationTable(rows.get(0)[0], pieces, coefficients);
  }

  private static void requireKelvinSteps(List<double[]> rows) {
    if (rows.size() < 4) {
      throw new IllegalArgumentException("a saturation table needs four lines or more");
    }
    for (int i = 1; i < rows.size(); i++) {
      if (rows.get(i)[0] - rows.get(i - 1)[0] != 1) {
        throw new IllegalArgumentException("saturation table: line " + (i + 2) + " is not 1 K on");
      }
    }
  }

  /**
   * Fills in every property and slope at a temperature.
   *
   * @param temperatureK saturation temperature, 280 to 600 K
   * @param out the object to fill
   */
  public void at(double temperatureK, Saturation out) {
    int piece = piece(temperatureK);
    double s = temperatureK - (firstK + piece);
    int c = piece * PIECE;
    out.pressurePa = value(c, s);
    out.pressureSlopePaPerK = slope(c, s);
    out.waterEnthalpyJPerKg = value(c + CUBIC, s);
    out.waterEnthalpySlopeJPerKgK = slope(c + CUBIC, s);
    out.steamEnthalpyJPerKg = value(c + 2 * CUBIC, s);
    out.steamEnthalpySlopeJPerKgK = slope(c + 2 * CUBIC, s);
    out.waterDensityKgPerM3 = value(c + 3 * CUBIC, s);
    out.waterDensitySlopeKgPerM3K = slope(c + 3 * CUBIC, s);
    out.steamDensityKgPerM3 = value(c + 4 * CUBIC, s);
    out.steamDensitySlopeKgPerM3K = slope(c + 4 * CUBIC, s);
  }

  /**
   * Returns the saturation pressure.
   *
   * @param temperatureK temperature, 280 to 600 K
   * @return pressure, Pa absolute
   */
  public double pressurePa(double temperatureK) {
    int piece = piece(temperatureK);
    return value(piece * PIECE, temperatureK - (firstK + piece));
  }

  /**
   * Returns the enthalpy of saturated water.
   *
   * @param temperatureK temperature, 280 to 600 K
   * @return enthalpy, J/kg
   */
  public double waterEnthalpyJPerKg(double temperatureK) {
    int piece = piece(temperatureK);
    return value(piece * PIECE + CUBIC, temperatureK - (firstK + piece));
  }

  private int piece(double temperatureK) {
    int i = (int) (temperatureK - firstK);
    return i < 0 ? 0 : Math.min(i, pieces - 1);
  }

  private double value(int c, double s) {
    double[] k = coefficients;
    return k[c] + s * (k[c + 1] + s * (k[c + 2] + s * k[c + 3]));
  }

  private double slope(int c, double s) {
    double[] k = coefficients;
    return k[c + 1] + s * (2 * k[c + 2] + s * 3 * k[c + 3]);
  }

  /** One line of the table as numbers. */
  private static final class Row {
    private Row() {}

    static double[] of(String line) {
      String[] cells = line.split(",", -1);
      double[] row = new double[cells.length];
      for (int i = 0; i < row.length; i++) {
        row[i] = Double.parseDouble(cells[i]);
      }
      return row;
    }
  }
}
