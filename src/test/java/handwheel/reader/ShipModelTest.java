package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import handwheel.plant.PlantNumber;
import handwheel.plant.Port;
import handwheel.plant.Quantity;
import handwheel.plant.Zone;
import handwheel.ship.Control;
import handwheel.ship.ControlKind;
import handwheel.ship.Gauge;
import handwheel.ship.Order;
import handwheel.ship.Place;
import handwheel.ship.PortMove;
import handwheel.ship.Ship;
import handwheel.ship.StandingAct;
import handwheel.ship.Verb;
import handwheel.ship.Watchstander;
import handwheel.ship.Way;
import handwheel.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a ship's files become. */
final class ShipModelTest {
  private static final Ship SHIP = TestFiles.smallShip();

  private static List<PortMove> moves(String fitting, Verb verb) {
    return SHIP.fitting(fitting).orElseThrow().moves(verb);
  }

  private static PortMove move(Port port, double to, double afterS) {
    return new PortMove(port, OptionalDouble.of(to), afterS);
  }

  @Test
  void placesAndWays() {
    assertThat(SHIP.place("stop-grating"))
        .contains(
            new Place(
                "stop-grating",
                "stop grating",
                Zone.UPPER,
                4,
                List.of("main-run"),
                Optional.empty()));
    assertThat(SHIP.place("main-run").flatMap(Place::leakPort)).contains(Port.LEAK_MAIN_RUN);
    assertThat(SHIP.ways()).contains(new Way("gauge-board", "stop-grating", 1, 4.5));
    assertThat(SHIP.ways()).contains(new Way("gauge-board", "boiler-front", 3, 0));
  }

  @Test
  void kindsBecomeActs() {
    assertThat(moves("main-stop", Verb.OPEN)).containsExactly(move(Port.MAIN_STOP, 1, 0));
    assertThat(moves("main-stop", Verb.SHUT)).containsExactly(move(Port.MAIN_STOP, 0, 0));
    assertThat(moves("main-stop", Verb.SET))
        .containsExactly(new PortMove(Port.MAIN_STOP, OptionalDouble.empty(), 0));
    assertThat(moves("fuel-trip", Verb.TRIP)).containsExactly(move(Port.FUEL_TRIP_SATURATED, 0, 0));
    assertThat(moves("fuel-trip", Verb.RESET))
        .containsExactly(move(Port.FUEL_TRIP_SATURATED, 1, 0));
    assertThat(moves("fuel-trip", Verb.SHUT)).isEmpty();
  }

  /** A header valve may stand above 1 for larger plates; opened by hand it is fully open. */
  @Test
  void openIsFullyOpenAndNotMore() {
    Ship alderReach = TestFiles.alderReach();

    assertThat(alderReach.fitting("header-valve-saturated").orElseThrow().moves(Verb.OPEN))
        .containsExactly(move(Port.HEADER_VALVE_SATURATED, 1, 0));
  }

  @Test
  void wordsOfAChoiceAreIndexes() {
    Ship alderReach = TestFiles.alderReach();

    assertThat(alderReach.fitting("fuel-pump").orElseThrow().moves(Verb.STOP))
        .containsExactly(move(Port.FUEL_PUMP, 3, 0));
    assertThat(alderReach.fitting("eductors").orElseThrow().moves(Verb.START))
        .containsExactly(move(Port.EDUCTORS, 2, 0));
  }

  @Test
  void actsOfSeveralMoves() {
    assertThat(moves("burner", Verb.LIGHT))
        .containsExactly(
            move(Port.TORCH_S1, 1, 0), move(Port.ROOT_S1, 1, 2), move(Port.TORCH_S1, 0, 9));
  }

  @Test
  void controls() {
    assertThat(SHIP.fitting("main-stop").orElseThrow().controls())
        .containsExactly(
            new Control("stop-grating", ControlKind.HANDWHEEL, 30, 60),
            new Control("remote-station", ControlKind.REACH_ROD, 60, 90));
  }

  @Test
  void gaugesAndWatch() {
    assertThat(SHIP.gauge("drum-level"))
        .contains(
            new Gauge(
                "drum-level",
                "drum level",
                Quantity.DRUM_LEVEL,
                List.of("gauge-board"),
                Unit.INCH,
                -7,
                7,
                0));
    assertThat(SHIP.watch().get(1))
        .isEqualTo(
            new Watchstander(
                "burnerman", "burnerman", "M. Okoro", "boiler-front", List.of("drum-level")));
  }

  @Test
  void standingActs() {
    Order trip =
        new Order.Work(
            "burnerman", Verb.TRIP, List.of("fuel-trip"), Optional.empty(), Optional.empty());

    assertThat(SHIP.standing())
        .containsExactly(
            new StandingAct("burnerman", Quantity.FURNACE_SATURATED_LIT, 0.5, 4, trip));
  }

  @Test
  void sizes() {
    assertThat(SHIP.numbers().get(PlantNumber.DRUM_WATER_AREA)).isEqualTo(5.5);
    assertThat(SHIP.numbers().get(PlantNumber.DRUM_STEEL)).isEqualTo(25_000);
    assertThat(SHIP.numbers().get(PlantNumber.DRUM_GLASS_VOLUME))
        .isEqualTo(PlantNumber.DRUM_GLASS_VOLUME.usual());
  }

  /** 35,000 lb/h is 35000 x 0.45359237 / 3600 kg/s (NIST SP 811, appendix B.8). */
  @Test
  void sizesInOtherUnits() {
    String sizes =
        """
        handwheel: plant 1
        numbers:
          safety.superheater.flow: 35000 lb/h
          superheater.gas-conductance: 15000 W/K
          safety.drum-1.set: 660 psig
          drum.steel: 2.5e4
        """;
    ShipFiles good = TestFiles.folder(TestFiles.SMALL_SHIP);
    Read<Ship> read =
        ShipReader.read(
            n -> n.equals("plant.yaml") ? Optional.of(TestFiles.bytes(sizes)) : good.read(n),
            TestFiles.states());

    assertThat(read.findings()).isEmpty();
    Ship ship = read.value().orElseThrow();
    assertThat(ship.numbers().get(PlantNumber.SAFETY_SUPERHEATER_FLOW))
        .isCloseTo(35_000 * 0.45359237 / 3600, within(1e-12));
    assertThat(ship.numbers().get(PlantNumber.SUPERHEATER_GAS_CONDUCTANCE)).isEqualTo(15_000);
    assertThat(ship.numbers().get(PlantNumber.SAFETY_DRUM_1_SET))
        .isCloseTo(660 * 6894.757, within(1e-6));
    assertThat(ship.numbers().get(PlantNumber.DRUM_STEEL)).isEqualTo(25_000);
  }

  @Test
  void conditions() {
    assertThat(SHIP.condition("steaming").orElseThrow().states())
        .containsEntry("drum.temperature", 526.960692689041)
        .containsEntry("burner.h3.lit", 1.0);
    assertThat(SHIP.condition("steaming").orElseThrow().ports())
        .containsEntry(Port.FUEL_PUMP, 0.0)
        .containsEntry(Port.PLATE_S1, 4.0)
        .containsEntry(Port.FEED_CHLORIDE, 5e-8)
        .containsEntry(Port.BLOWER_1_RESET, 0.0)
        .hasSize(Port.values().length);
  }
}
