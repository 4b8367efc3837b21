package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import handwheel.casualty.Amount;
import handwheel.casualty.Basis;
import handwheel.casualty.Bound;
import handwheel.casualty.Casualty;
import handwheel.casualty.Course;
import handwheel.casualty.CrewState;
import handwheel.casualty.Fault;
import handwheel.casualty.FaultKind;
import handwheel.casualty.Never;
import handwheel.casualty.OutcomeRule;
import handwheel.casualty.Phase;
import handwheel.casualty.PhaseAct;
import handwheel.casualty.Start;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.casualty.Truth;
import handwheel.casualty.Upon;
import handwheel.casualty.Variation;
import handwheel.casualty.When;
import handwheel.casualty.Window;
import handwheel.diagnostics.SourceSpot;
import handwheel.plant.Port;
import handwheel.plant.Quantity;
import handwheel.ship.Ship;
import handwheel.units.Unit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What a script becomes. Figures are worked out by hand: 20 ticks a second; 1 in = 0.0254 m exactly
 * (NIST SP 811, appendix B.8).
 */
final class ScriptModelTest {
  private static final Ship SHIP = TestFiles.smallShip();
  private static final String GOOD = TestFiles.text(TestFiles.GOOD.resolve("small.yaml"));
  private static final Casualty CASUALTY = read(GOOD);

  private static Casualty read(String text) {
    Read<Casualty> read = ScriptReader.read("a.yaml", TestFiles.bytes(text), SHIP);
    assertThat(read.findings()).isEmpty();
    return read.value().orElseThrow();
  }

  private static When whileOf(String condition) {
    return read(GOOD.replace("{plant: furnace.any.lit, is: true}", condition))
        .nevers()
        .get(0)
        .during();
  }

  @Test
  void head() {
    assertThat(CASUALTY.id()).isEqualTo("small-leak");
    assertThat(CASUALTY.start()).isEqualTo(new Start("steaming", CrewState.GREEN));
    assertThat(CASUALTY.limitTicks()).isEqualTo(8 * 60 * 20);
    assertThat(CASUALTY.passPoints()).isEqualTo(80);
    assertThat(CASUALTY.cautions().get(0).before()).containsExactly("clear", "main-stop");
    assertThat(CASUALTY.cautions().get(0).spot()).isEqualTo(new SourceSpot("a.yaml", 8, 5));
  }

  @Test
  void variations() {
    assertThat(CASUALTY.vary())
        .containsExactly(
            new Variation("hole", 0.75 * 0.0254, 0.0254, Unit.INCH),
            new Variation("onset", 20, 60, Unit.SECOND));
  }

  @Test
  void phases() {
    assertThat(CASUALTY.phases())
        .extracting(Phase::id)
        .containsExactly("steady", "leaking", "over");
    assertThat(CASUALTY.phases().get(0).next())
        .containsExactly(
            new Phase.Transition(
                "leaking", Optional.of(new Amount.Drawn("onset")), Optional.empty()));
    assertThat(CASUALTY.phases().get(1).acts())
        .containsExactly(
            new Fault.OfMachine(
                "break",
                FaultKind.LEAK,
                List.of(
                    new Fault.Aim(Port.LEAK_MAIN_RUN, new Amount.Drawn("hole"), Fault.Scale.BORE)),
                Course.atOnce(new Amount.Fixed(2))),
            new PhaseAct.Cue("roar", PhaseAct.Sense.HEARD, "everywhere", "A roar overhead."));
    assertThat(CASUALTY.phases().get(1).next().get(0).when())
        .contains(new When.PlantIs(new Truth.LeakFlow("break"), new Bound(true, 0.05), 100));
    assertThat(CASUALTY.phases().get(2).isEnd()).isTrue();
  }

  @Test
  void outsideActs() {
    String act = "      - {outside: main-stop, to: shut, over: 10 s}\n";
    String set = "      - {outside: main-stop, to: 25 %, over: vary onset}\n";
    Casualty casualty = read(GOOD.replace("      - {cue", act + set + "      - {cue"));

    assertThat(casualty.phases().get(1).acts())
        .contains(
            new PhaseAct.Outside("main-stop", Port.MAIN_STOP, 0, new Amount.Fixed(10)),
            new PhaseAct.Outside("main-stop", Port.MAIN_STOP, 0.25, new Amount.Drawn("onset")));
  }

  @Test
  void steps() {
    Step stop = CASUALTY.response().get(3);

    assertThat(stop.test()).isEqualTo(new StepTest.FittingIs(List.of("main-stop"), false));
    assertThat(stop.within()).contains(new Window(1_800, Window.Since.CUE, "roar"));
    assertThat(stop.done()).contains(new Window(4_800, Window.Since.CUE, "roar"));
    assertThat(stop.place()).contains(Step.Side.REMOTE);
    assertThat(stop.after()).hasSize(1).containsEntry("fires-proved", "O2");
    assertThat(stop.grade().points()).isEqualTo(20);
    assertThat(stop.grade().basis()).isEqualTo(Basis.TRADE_RULE);
    assertThat(CASUALTY.response().get(0).test()).isEqualTo(new StepTest.Ordered("everyone leave"));
  }

  /** 5 psig of burner line is a gauge pressure: 5 x 6894.757 Pa. */
  @Test
  void readingsOfAGaugePressure() {
    assertThat(CASUALTY.response().get(2).test())
        .isEqualTo(
            new StepTest.ReadProof(
                "burner-line-pressure", new Bound(true, 5 * 6894.757), Unit.PSIG));
  }

  /**
   * Drum pressure is absolute: 20 psig is 20 x 6894.757 + 101325 Pa, 34.7 psia is 34.7 x 6894.757.
   */
  @Test
  void readingsOfAnAbsolutePressure() {
    assertThat(boundOf("{gauge: drum-pressure, below: 20 psig}"))
        .isCloseTo(20 * 6894.757 + 101_325, within(1e-6));
    assertThat(boundOf("{plant: drum.pressure, below: 34.7 psia}"))
        .isCloseTo(34.7 * 6894.757, within(1e-6));
    assertThat(boundOf("{plant: drum.level, below: -3 in}")).isCloseTo(-0.0762, within(1e-12));
    assertThat(boundOf("{plant: superheater.outlet.temperature, below: 850 F}"))
        .isCloseTo(1_309.67 / 1.8, within(1e-9));
  }

  private static double boundOf(String condition) {
    When when = whileOf(condition);
    return when instanceof When.GaugeIs gauge
        ? gauge.bound().si()
        : ((When.PlantIs) when).bound().si();
  }

  @Test
  void conditions() {
    assertThat(CASUALTY.nevers().get(0).during())
        .isEqualTo(
            new When.PlantIs(new Truth.Of(Quantity.FURNACE_ANY_LIT), new Bound(false, 0.5), 0));
    assertThat(whileOf("{plant: furnace.any.lit, is: false, for: 0.5 s}"))
        .isEqualTo(
            new When.PlantIs(new Truth.Of(Quantity.FURNACE_ANY_LIT), new Bound(true, 0.5), 10));
    assertThat(whileOf("{all: [{cue: roar, is: given}, {count: whole, is: false}]}"))
        .isEqualTo(
            new When.All(List.of(new When.CueGiven("roar", true), new When.CountDone(false))));
    assertThat(whileOf("{cue: roar, is: open}")).isEqualTo(new When.CueGiven("roar", false));
  }

  @Test
  void reportsAndHeadCounts() {
    Casualty casualty =
        read(
            GOOD.replace("points: 30, basis", "points: 10, basis")
                .replace(
                    "never:",
                    """
                      - {id: told, report: leak, to: remote-hand, points: 10, basis: trade-rule}
                      - {id: counted, muster: counted, points: 10, basis: ship-figure}
                    never:""")
                .replace("{plant: furnace.any.lit, is: true}", "{report: leak, is: open}")
                .replace("upon: done fuel-trip", "upon: passed leak"));

    assertThat(casualty.messages()).containsExactly("leak");
    assertThat(casualty.response().get(4).test())
        .isEqualTo(new StepTest.Reported("leak", "remote-hand"));
    assertThat(casualty.response().get(5).test()).isEqualTo(new StepTest.Mustered());
    assertThat(casualty.nevers().get(0).during()).isEqualTo(new When.ReportPassed("leak", false));
    assertThat(casualty.witness().get(2).upon()).isEqualTo(new Upon.Passed("leak"));
  }

  @Test
  void zonesBecomeTheirPlaces() {
    Casualty casualty =
        read(
            GOOD.replace(
                "moving: main-stop, toward: shut", "send: anyone, to: [stop-grating, upper]"));
    Casualty one =
        read(GOOD.replace("moving: main-stop, toward: shut", "send: burnerman, to: lower"));

    assertThat(casualty.nevers().get(0).act())
        .isEqualTo(new Never.Sending("anyone", List.of("stop-grating", "main-run")));
    assertThat(one.nevers().get(0).act())
        .isEqualTo(new Never.Sending("burnerman", List.of("gauge-board", "boiler-front")));
    assertThat(CASUALTY.nevers().get(0).act()).isEqualTo(new Never.Moving("main-stop", false));
    assertThat(CASUALTY.outcomes().get(0))
        .isInstanceOfSatisfying(
            OutcomeRule.People.class, p -> assertThat(p.harm()).isEqualTo(OutcomeRule.Harm.HURT));
  }

  @Test
  void witness() {
    assertThat(CASUALTY.witness().get(0).upon()).isEqualTo(new Upon.CueNoticed("roar"));
    assertThat(CASUALTY.witness().get(0).waitTicks()).isEqualTo(60);
    assertThat(CASUALTY.witness().get(2).upon()).isEqualTo(new Upon.Done("fuel-trip"));
    assertThat(CASUALTY.witness().get(3).upon())
        .isEqualTo(new Upon.ReadingIs("burner-line-pressure", new Bound(true, 5 * 6894.757)));
    assertThat(CASUALTY.witness().get(3).say()).isEqualTo("remote-hand shut main-stop");
    assertThat(CASUALTY.witness().get(3).spot()).isEqualTo(new SourceSpot("a.yaml", 43, 5));
  }

  @Test
  void theShipOfAScriptIsKnownBeforeTheShipIs() {
    Read<NamedShip> read = ScriptReader.shipOf("a.yaml", TestFiles.bytes(GOOD));

    assertThat(read.value()).contains(new NamedShip("small-ship", new SourceSpot("a.yaml", 5, 7)));
    assertThat(read.findings()).isEmpty();
  }

  @Test
  void theShipOfAScriptIsKnownInSpiteOfOtherMistakes() {
    String text = GOOD.replace("limit: 8 min", "limit: 8");

    assertThat(ScriptReader.shipOf("a.yaml", TestFiles.bytes(text)).value()).isPresent();
    assertThat(ScriptReader.shipOf("a.yaml", TestFiles.bytes("a: [")).findings()).hasSize(1);
  }

  @Test
  void severalLinesBecomeOne() {
    String text = GOOD.replace("brief: Full power. You", "brief: |\n  Full power.\n\n  You");

    assertThat(read(text).brief()).isEqualTo(CASUALTY.brief());
  }

  /** A finding is printed on a terminal; what the author wrote must not steer it. */
  @Test
  void escapesDoNotReachTheTerminal() {
    String text = GOOD.replace("limit:", "\"\\e]0;x\\a\": 1\nlimit:");
    Read<Casualty> read = ScriptReader.read("a.yaml", TestFiles.bytes(text), SHIP);

    assertThat(read.value()).isEmpty();
    assertThat(read.findings()).hasSize(2);
    assertThat(read.findings())
        .allSatisfy(
            f -> assertThat(f.text().codePoints().filter(c -> c < 0x20 && c != '\n')).isEmpty());
  }

  @Test
  void placesCountLettersNotUnits() {
    String text = GOOD.replace("text: A roar overhead.", "text: 🔥 roar, heard: nowhere");
    Read<Casualty> read = ScriptReader.read("a.yaml", TestFiles.bytes(text), SHIP);

    assertThat(read.findings()).extracting(f -> f.spot().toString()).contains("a.yaml:25:54");
  }
}
