package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.casualty.PhaseAct;
import handwheel.ship.Ship;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Plain texts that YAML 1.1 takes for something else: booleans, octal, sexagesimal and grouped
 * numbers, dates, merge keys. YAML 1.2.2 section 10 drops most of them (10.2.1 and 10.3.2 list what
 * is left: null, true, false, numbers). Here a text is a text wherever a text is wanted.
 */
final class YamlTrapsTest {
  private static final Ship SHIP = TestFiles.smallShip();
  private static final String GOOD = TestFiles.text(TestFiles.GOOD.resolve("small.yaml"));

  private static Read<Casualty> read(String text) {
    return ScriptReader.read("a.yaml", TestFiles.bytes(text), SHIP);
  }

  static Stream<String> traps() {
    return Stream.of(
            "yes No ON off y n True FALSE true ~ null Null NULL << = -",
            "12:30 1:30:00 0:05 12:30:45.5 2024-01-05 2031-02-03T08:15:00Z",
            "010 08 0o10 0x1F 0b101 1_000 +5 .5 5. 1e3 0.10 .inf -.INF .nan -5",
            "1,000 10% 3/4 don't a#b")
        .flatMap(line -> Stream.of(line.split(" ")));
  }

  @ParameterizedTest
  @MethodSource("traps")
  void textStaysAsWritten(String text) {
    String quoted = text.equals("-") ? "'-'" : text;
    Read<Casualty> read =
        read(GOOD.replace("brief: Full power. You have the watch.", "brief: " + quoted));

    assertThat(read.findings()).isEmpty();
    assertThat(read.value().orElseThrow().brief()).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"yes", "no", "on", "off", "y", "n", "true", "false", "null"})
  void wordsThatWereBooleansAreIds(String word) {
    Read<Casualty> read = read(GOOD.replace("roar", word));

    assertThat(read.findings()).isEmpty();
    assertThat(read.value().orElseThrow().phases().get(1).acts().get(1))
        .isInstanceOfSatisfying(PhaseAct.Cue.class, cue -> assertThat(cue.id()).isEqualTo(word));
  }

  /** YAML 1.2.2 section 10.2.1.2 knows two booleans. */
  @ParameterizedTest
  @ValueSource(strings = {"yes", "no", "on", "off", "y", "n", "True", "TRUE", "False", "1", "0"})
  void onlyTrueAndFalseAreTrueAndFalse(String word) {
    Read<Casualty> read = read(GOOD.replace("end: true", "end: " + word));

    assertThat(read.value()).isEmpty();
    assertThat(read.findings()).extracting(f -> f.id()).contains("script.not-true-or-false");
  }

  @Test
  void quotedTrueIsTrueAsWell() {
    assertThat(read(GOOD.replace("end: true", "end: \"true\"")).findings()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"1:30", "90", "0x5A s", "1_0 s", "1e1 s", "90 S", "1m30s", "PT90S"})
  void timesAreFiguresWithAUnit(String text) {
    Read<Casualty> read = read(GOOD.replace("limit: 8 min", "limit: " + text));

    assertThat(read.value()).isEmpty();
    assertThat(read.findings()).hasSize(1).allMatch(f -> f.spot().line() == 16);
  }

  /** A blank between figure and unit may be left out; both are 480 s of 20 ticks. */
  @ParameterizedTest
  @ValueSource(strings = {"8 min", "8min", "480 s", "\"480 s\"", "'480s'", "8.0 min", "+8 min"})
  void oneTimeManyForms(String text) {
    Read<Casualty> read = read(GOOD.replace("limit: 8 min", "limit: " + text));

    assertThat(read.findings()).isEmpty();
    assertThat(read.value().orElseThrow().limitTicks()).isEqualTo(9_600);
  }
}
