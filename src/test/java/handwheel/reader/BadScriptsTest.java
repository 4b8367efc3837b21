package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.diagnostics.Finding;
import handwheel.ship.Ship;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Mistakes as people make them: each changes one thing in the shipped script, and the findings are
 * compared with approved ones. What YAML 1.1 made of {@code yes} or {@code 12:30} and what YAML
 * 1.2.2 (section 10) makes of them plays no part: texts are read by what is wanted.
 */
class BadScriptsTest {
  private static final Path GOLDEN = Path.of("src/test/resources/scripts/bad");
  private static final Ship SHIP = ShippedFiles.ship().value().orElseThrow();
  private static final String GOOD = new String(ShippedFiles.STEAM_LEAK, StandardCharsets.UTF_8);

  /** One mistake: the first {@code from} in the shipped script becomes {@code to}. */
  private record Mistake(String name, String from, String to) {
    String text() {
      int at = GOOD.indexOf(from);
      assertThat(at).as(name + ": " + from).isNotNegative();
      return GOOD.substring(0, at) + to + GOOD.substring(at + from.length());
    }

    @Override
    public String toString() {
      return name;
    }
  }

  private static Mistake m(String name, String from, String to) {
    return new Mistake(name, from, to);
  }

  static Stream<Mistake> mistakes() {
    return Stream.concat(writing(), meaning());
  }

  private static Stream<Mistake> writing() {
    return Stream.of(
        m("anchor", "title: Trouble overhead", "title: &t Trouble overhead"),
        m("bad-id", "id: steam-leak", "id: Steam_Leak"),
        m("bad-order", "say: remote-hand shut main-stop", "say: remote-hand shut man-stop"),
        m("bad-upon", "upon: counted", "upon: everybody out"),
        m("bare-figure", "hole: {from: 0.75 in", "hole: {from: 0.75"),
        m("clock-time", "limit: 8 min", "limit: 8:00"),
        m("comma-in-text", "title: Trouble overhead", "title: [Trouble, overhead]"),
        m("control-character", "title: Trouble overhead", "title: Trouble \u0007 overhead"),
        m("critical-model-only", "basis: trade-rule, why: At", "basis: model-only, why: At"),
        m("curly-quotes", "title: Trouble overhead", "title: “Trouble overhead”"),
        m("cycle", "after: {fires-proved: O18}", "after: {isolated: O18, blowers: O18}"),
        m("dead-end", "- {id: over, end: true}", "- {id: over, end: false}"),
        m("decimal-comma", "to: 1.00 in", "to: \"1,00 in\""),
        m("duplicate-key", "family: steam-leak", "family: steam-leak\nfamily: steam-leak"),
        m("duplicate-step", "id: out-saturated, fitting", "id: clear, fitting"),
        m("empty-brief", "brief: >-", "brief: \"\"\nobjektive: >-"),
        m("empty-value", "family: steam-leak", "family:"),
        m("fraction-tick", "wait: 3 s, say: everyone", "wait: 3.01 s, say: everyone"),
        m("header", "handwheel: script 1", "handwheel: script 2"));
  }

  private static Stream<Mistake> meaning() {
    return Stream.of(
        m("indent", "  hole: {from", "   hole: {from"),
        m("inches-mark", "from: 0.75 in", "from: 0.75 inches"),
        m("no-blank", "family: steam-leak", "family:steam-leak"),
        m("no-cautions", "cautions:\n", "cautions: []\nold:\n"),
        m("no-leak-place", "at: main-run", "at: gauge-board"),
        m(
            "open-brace",
            "{condition: full-power, crew: green}",
            "{condition: full-power, crew: green"),
        m("open-quote", "title: Trouble overhead", "title: \"Trouble overhead"),
        m("points", "points: 15", "points: 20"),
        m("psi-without-g", "below: 5 psig", "below: 5 psi"),
        m("rule", "{fires-proved: O2}, points: 12", "{fires-proved: two}, points: 12"),
        m("tab", "  - id: jet", "\t- id: jet"),
        m("title-tells", "title: Trouble overhead", "title: Steam overhead"),
        m(
            "two-tests",
            "order: everyone leave, within",
            "order: everyone leave, muster: counted, within"),
        m("unit-of-another-kind", "within: 15 s of cue roar", "within: 15 psig of cue roar"),
        m("unknown-condition", "condition: full-power", "condition: ful-power"),
        m("unknown-crew", "crew: green", "crew: experienced"),
        m("unknown-cue", "within: 40 s of cue roar", "within: 40 s of cue rore"),
        m("unknown-fitting", "fitting: bulkhead-stop", "fitting: bulkhed-stop"),
        m("unknown-gauge", "read: line-pressure, below", "read: line-presure, below"),
        m("unknown-key", "objective:", "objectiv:"),
        m("unknown-phase", "next: [{to: leaking", "next: [{to: leeking"),
        m("unknown-quantity", "plant: furnace.any.lit", "plant: furnace.any.light"),
        m("unknown-ship", "ship: alder-reach", "ship: alder-reech"),
        m("unknown-step", "before: [clear,", "before: [claer,"),
        m("unknown-variation", "after: vary onset", "after: vary outset"),
        m("unreachable", "- {to: fog, after: 4 s}", "- {to: throttled, after: 4 s}"),
        m("window-words", "within: 15 s of cue roar", "within: 15 s after roar"),
        m("yes-as-boolean", "critical: true, basis", "critical: yes, basis"));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void isFoundWithItsPlaceAndItsMend(Mistake mistake) throws IOException {
    Read<Casualty> read = read(mistake.text());
    String found =
        read.findings().stream().map(Finding::text).collect(Collectors.joining("\n")) + "\n";
    Path golden = GOLDEN.resolve(mistake.name() + ".findings");
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(golden, found);
    }
    assertThat(read.findings()).isNotEmpty();
    assertThat(read.findings()).allMatch(f -> f.spot().line() > 0 && f.spot().column() > 0);
    assertThat(found).isEqualTo(Files.readString(golden));
  }

  @Test
  void noGoldenIsLeftOver() throws IOException {
    List<String> names = mistakes().map(m -> m.name() + ".findings").sorted().toList();
    try (Stream<Path> files = Files.list(GOLDEN)) {
      assertThat(files.map(f -> f.getFileName().toString()).sorted()).isEqualTo(names);
    }
  }

  @Test
  void theShippedScriptHasNoFindingsWithAnyLineEnd() {
    assertThat(ShippedFiles.ship().findings()).isEmpty();
    assertThat(read(GOOD).findings()).isEmpty();
    assertThat(read(GOOD.replace("\n", "\r\n")).findings()).isEmpty();
    assertThat(read("\uFEFF" + GOOD).findings()).isEmpty();
  }

  /** Spoilt files never throw. The seed is fixed so that a failure can be seen again. */
  @Test
  void spoiltFilesNeverThrow() {
    Random random = new Random(20_261_125);
    for (int i = 0; i < 2000; i++) {
      byte[] spoilt = ShippedFiles.STEAM_LEAK.clone();
      for (int k = 0; k <= i % 3; k++) {
        spoilt[random.nextInt(spoilt.length)] = (byte) random.nextInt(256);
      }
      Read<Casualty> read = ScriptReader.read("s.yaml", spoilt, SHIP);
      assertThat(read.findings().size())
          .as("mutation %d", i)
          .isLessThanOrEqualTo(Limits.FINDINGS + 1);
    }
  }

  @Test
  void shufflesOfLinesNeverThrow() {
    Random random = new Random(7);
    List<String> lines = GOOD.lines().toList();
    for (int i = 0; i < 300; i++) {
      int a = random.nextInt(lines.size());
      int b = random.nextInt(lines.size());
      String text =
          Stream.concat(
                  lines.stream().limit(a),
                  Stream.concat(Stream.of(lines.get(b)), lines.stream().skip(a + (i % 2))))
              .collect(Collectors.joining("\n"));
      assertThat(read(text)).as("shuffle %d", i).isNotNull();
    }
  }

  @Test
  void aSpoiltShipNeverThrows() {
    Random random = new Random(11);
    for (int i = 0; i < 200; i++) {
      Read<Ship> read = ShipReader.read(spoilt(random));
      assertThat(read.findings().size()).isLessThanOrEqualTo(Limits.FINDINGS + 1);
    }
    assertThat(ShipReader.read(name -> java.util.Optional.empty()).findings()).isNotEmpty();
  }

  private static ShipFiles spoilt(Random random) {
    return name ->
        ShippedFiles.files()
            .read(name)
            .map(
                bytes -> {
                  byte[] other = bytes.clone();
                  other[random.nextInt(other.length)] = (byte) random.nextInt(256);
                  return other;
                });
  }

  @Test
  void everyFindingHasItsSection() throws IOException {
    List<String> headings =
        Files.readAllLines(Path.of("docs/findings.md")).stream()
            .filter(l -> l.startsWith("## "))
            .map(l -> l.substring(3))
            .toList();
    assertThat(headings)
        .containsExactlyInAnyOrderElementsOf(
            Stream.of(FindingId.values()).map(FindingId::id).toList());
    String page = Files.readString(Path.of("docs/findings.md"));
    assertThat(Stream.of(FindingId.values())).allMatch(f -> page.contains(f.meaning()));
  }

  private static Read<Casualty> read(String text) {
    return ScriptReader.read("s.yaml", text.getBytes(StandardCharsets.UTF_8), SHIP);
  }
}
