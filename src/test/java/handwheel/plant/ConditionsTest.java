package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.units.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The start conditions of the ships: each file is what running the plant makes of it, and each is
 * as steady as its certificate says. With {@code -Dgolden.update=true} files and certificate are
 * written anew.
 */
class ConditionsTest {
  private static final Path SHIPS = Path.of("drills", "ships");
  private static final Path PAGE = Path.of("docs", "plant", "conditions.md");
  private static final double ALDER_OUTLET_F = 850;
  private static final double FENNEL_OUTLET_F = 800;
  private static final int FIVE_MINUTES = 6000;

  private static final List<Made> ALL =
      Stream.of(ship("alder-reach", ALDER_OUTLET_F), ship("fennel-rock", FENNEL_OUTLET_F))
          .flatMap(s -> s)
          .toList();

  /** How far the drum pressure may go in five minutes, psi. */
  private enum Goes {
    NOWHERE(-0.01, 0.01),
    SLOWLY_DOWN(-6, 0),
    UP(10, 30);

    private final double leastPsi;
    private final double mostPsi;

    Goes(double leastPsi, double mostPsi) {
      this.leastPsi = leastPsi;
      this.mostPsi = mostPsi;
    }
  }

  /** A condition: its ship, its id, how far it drifts, the plant standing in it. */
  private record Made(String ship, String id, Goes goes, Plant plant) {
    Plant copy() {
      return plant.copy();
    }
  }

  private static Stream<Made> ship(String ship, double outletF) {
    Workshop workshop = new Workshop(ShipNumbers.of(ship));
    Function<String, Plant> load = start -> workshop.load(start, outletF);
    return Stream.of(
        new Made(ship, "cold", Goes.NOWHERE, workshop.from("boiler-cold")),
        new Made(ship, "raising-steam", Goes.UP, workshop.raisingSteam()),
        new Made(ship, "banked", Goes.SLOWLY_DOWN, workshop.banked()),
        new Made(ship, "one-burner", Goes.NOWHERE, workshop.oneBurner()),
        new Made(ship, "quarter-power", Goes.NOWHERE, load.apply("25")),
        new Made(ship, "half-power", Goes.NOWHERE, load.apply("50")),
        new Made(ship, "full-power", Goes.NOWHERE, load.apply("100")));
  }

  static Stream<Arguments> made() {
    return ALL.stream().map(m -> Arguments.of(m.ship(), m.id(), m.copy()));
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("made")
  void theFileIsWhatThePlantMakes(String ship, String id, Plant plant) throws IOException {
    String text = Workshop.text(id, plant);
    Path file = SHIPS.resolve(ship).resolve(id + ".yaml");
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(file, text);
    }
    assertThat(Files.readString(file)).isEqualTo(text);
  }

  static Stream<Arguments> drifts() {
    return ALL.stream().map(m -> Arguments.of(m.ship(), m.id(), m.goes(), m.copy()));
  }

  /** Five minutes with every hand off. */
  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("drifts")
  void driftsNoFurtherThanItMay(String ship, String id, Goes goes, Plant plant) {
    plant.evaluate();
    Moment before = Moment.of(plant);
    Run.ticks(plant, FIVE_MINUTES);
    Moment after = Moment.of(plant);
    assertThat(after.psig() - before.psig()).isBetween(goes.leastPsi, goes.mostPsi);
    boolean isSteady = goes == Goes.NOWHERE && !id.equals("cold");
    assertThat(Math.abs(after.levelIn() - before.levelIn())).isLessThan(isSteady ? 0.01 : 0.5);
    assertThat(Math.abs(after.outletF() - before.outletF())).isLessThan(isSteady ? 0.1 : 20);
    assertThat(Math.abs(after.brickF() - before.brickF())).isLessThan(isSteady ? 0.1 : 10);
  }

  @Test
  void theCertificateStands() throws IOException {
    StringBuilder page = new StringBuilder();
    page.append(
        """
        # Start conditions

        Made by running each ship's plant from the reference conditions, and written by a test; the
        files hold every state to the last digit. "In 5 min" is how far each figure goes with every
        valve left alone: steady conditions stand still, a banked boiler cools, a boiler raising steam
        rises. All figures are this plant's, not a ship's.

        | ship | condition | drum psig | in 5 min | level in | in 5 min | outlet F | in 5 min | saturated brick F | in 5 min | burners lit | fuel lb/h |
        |---|---|---|---|---|---|---|---|---|---|---|---|
        """);
    ALL.forEach(m -> page.append(row(m)));
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(PAGE.getParent());
      Files.writeString(PAGE, page);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(page.toString());
  }

  private static String row(Made made) {
    Plant plant = made.copy();
    plant.evaluate();
    Moment before = Moment.of(plant);
    double fuel = plant.value(Quantity.FUEL_FLOW) / Plant.LB_PER_H;
    double lit =
        plant.value(Quantity.FURNACE_SATURATED_BURNERS_LIT)
            + plant.value(Quantity.FURNACE_SUPERHEATER_BURNERS_LIT);
    Run.ticks(plant, FIVE_MINUTES);
    Moment after = Moment.of(plant);
    return String.format(
        Locale.ROOT,
        "| %s | %s | %.1f | %s | %s | %s | %.1f | %s | %.1f | %s | %.0f | %.0f |%n",
        made.ship(),
        made.id(),
        before.psig(),
        change(after.psig() - before.psig(), 2),
        figure(before.levelIn()),
        change(after.levelIn() - before.levelIn(), 2),
        before.outletF(),
        change(after.outletF() - before.outletF(), 1),
        before.brickF(),
        change(after.brickF() - before.brickF(), 1),
        lit,
        fuel);
  }

  private static String figure(double levelIn) {
    return change(levelIn, 2).replace("+", "");
  }

  private static String change(double by, int digits) {
    String figure = String.format(Locale.ROOT, "%+." + digits + "f", by);
    return figure.replaceFirst("^[+-](0(?:\\.0+)?)$", "$1");
  }

  /** What a watch would read. */
  private record Moment(double psig, double levelIn, double outletF, double brickF) {
    static Moment of(Plant plant) {
      return new Moment(
          Math.max(Workshop.psig(plant), 0),
          plant.value(Quantity.DRUM_LEVEL) / 0.0254,
          fahrenheit(plant, Quantity.SUPERHEATER_OUTLET_TEMPERATURE),
          fahrenheit(plant, Quantity.FURNACE_SATURATED_BRICK_TEMPERATURE));
    }

    private static double fahrenheit(Plant plant, Quantity quantity) {
      return Unit.FAHRENHEIT.fromSi(plant.value(quantity));
    }
  }
}
