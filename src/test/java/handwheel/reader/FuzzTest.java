package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.diagnostics.Finding;
import handwheel.ship.Ship;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Damages good files at random. Nothing may be thrown, every finding must lie inside the file, and
 * what could not be read must have been said.
 */
final class FuzzTest {
  /** The long form: {@code -Dfuzz.scripts=100000}. */
  private static final int SCRIPTS = Integer.getInteger("fuzz.scripts", 3_000);

  private static final long LONGEST_NS = 1_000_000_000L;
  private static final int SHIPS = 400;

  /** What stands between words of the language, and what people and editors put there. */
  private static final List<String> SPLINTERS =
      List.of(
          ":",
          " ",
          ",",
          "{",
          "}",
          "[",
          "]",
          "\"",
          "'",
          "#",
          "- ",
          "&a ",
          "*a",
          "!x ",
          "? ",
          "|",
          ">",
          "%",
          "@",
          "`",
          "~",
          "\n",
          "\r",
          "\t",
          "\u00a0",
          "“",
          "---\n",
          "...\n",
          "<<: ",
          "null",
          "yes",
          "12:30",
          "0x1F",
          "1e999 s",
          "-0 s",
          "\\",
          "\"\\x00\"",
          "vary hole",
          "99999999999999999999",
          "leak..flow",
          "s of cue",
          "points");

  private final Random random = new Random(20_310_203);

  @Test
  void damagedScriptsAreReadToTheEnd() {
    Ship ship = TestFiles.alderReach();
    List<Path> scripts = new ArrayList<>(TestFiles.files(TestFiles.DRILLS, ".yaml"));
    scripts.addAll(TestFiles.files(Path.of("docs/scripts/examples"), ".yaml"));
    for (int i = 0; i < SCRIPTS; i++) {
      byte[] bytes = damaged(TestFiles.bytes(scripts.get(i % scripts.size())));
      long start = System.nanoTime();
      Read<Casualty> read = ScriptReader.read("fuzz.yaml", bytes, ship);
      long tookNs = System.nanoTime() - start;
      assertThat(tookNs).as(() -> new String(bytes, StandardCharsets.UTF_8)).isLessThan(LONGEST_NS);
      check(bytes, read);
      read.value().ifPresent(c -> assertThat(handwheel.proof.Reach.of(c, ship)).isNotNull());
      assertThat(ScriptReader.shipOf("fuzz.yaml", bytes)).isNotNull();
    }
  }

  @Test
  void damagedShipsAreReadToTheEnd() {
    List<Path> files = TestFiles.files(TestFiles.SMALL_SHIP, ".yaml");
    for (int i = 0; i < SHIPS; i++) {
      Path damagedFile = files.get(i % files.size());
      byte[] bytes = damaged(TestFiles.bytes(damagedFile));
      ShipFiles good = TestFiles.folder(TestFiles.SMALL_SHIP);
      Read<Ship> read =
          ShipReader.read(
              name ->
                  damagedFile.getFileName().toString().equals(name)
                      ? Optional.of(bytes)
                      : good.read(name),
              TestFiles.states());
      assertThat(read.value().isPresent() || hasFault(read.findings()))
          .as(() -> new String(bytes, StandardCharsets.UTF_8))
          .isTrue();
    }
  }

  private static void check(byte[] bytes, Read<Casualty> read) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    long lines = text.lines().count() + 1;
    assertThat(read.value().isPresent() || hasFault(read.findings())).as(() -> text).isTrue();
    for (Finding finding : read.findings()) {
      assertThat((long) finding.spot().line()).as(() -> text).isBetween(0L, lines);
      assertThat(finding.message()).isNotBlank().doesNotContain("\n");
    }
  }

  private static boolean hasFault(List<Finding> findings) {
    return findings.stream().anyMatch(Finding::stopsTheDrill);
  }

  private byte[] damaged(byte[] bytes) {
    byte[] damaged = bytes;
    int wounds = 1 + random.nextInt(3);
    for (int i = 0; i < wounds; i++) {
      damaged = random.nextInt(3) == 0 ? damagedByte(damaged) : damagedText(damaged);
    }
    return damaged;
  }

  private byte[] damagedByte(byte[] bytes) {
    byte[] damaged = bytes.clone();
    if (damaged.length > 0) {
      damaged[random.nextInt(damaged.length)] ^= (byte) (1 << random.nextInt(8));
    }
    return damaged;
  }

  private byte[] damagedText(byte[] bytes) {
    List<String> lines =
        new ArrayList<>(Arrays.asList(new String(bytes, StandardCharsets.UTF_8).split("\n", -1)));
    int at = random.nextInt(lines.size());
    String line = lines.get(at);
    int column = random.nextInt(line.length() + 1);
    switch (random.nextInt(6)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(at, line);
      case 2 -> lines.set(at, " ".repeat(random.nextInt(4)) + line.strip());
      case 3 -> lines.set(at, line.substring(0, column));
      case 4 -> lines.add(random.nextInt(lines.size()), lines.remove(at));
      default ->
          lines.set(
              at,
              line.substring(0, column)
                  + SPLINTERS.get(random.nextInt(SPLINTERS.size()))
                  + line.substring(Math.min(line.length(), column + random.nextInt(3))));
    }
    return TestFiles.bytes(String.join("\n", lines));
  }
}
