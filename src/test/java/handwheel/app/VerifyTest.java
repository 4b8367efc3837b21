package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.Chain;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record holds, and a changed one does not. */
class VerifyTest {
  @TempDir private Path dir;

  private Path record() throws IOException {
    Shipped.run("rehearse", "steam-leak", "--seed", "3", "--records", dir.toString());
    try (Stream<Path> files = Files.list(dir)) {
      return files.filter(f -> f.toString().endsWith(".hwr")).findFirst().orElseThrow();
    }
  }

  @Test
  void aRecordVerifiesAndIsTold() throws IOException {
    Path record = record();
    assertThat(Shipped.run("verify", record.toString()).exit()).isZero();
    Shipped.Said debrief = Shipped.run("debrief", record.toString());
    assertThat(debrief.exit()).isZero();
    assertThat(debrief.out()).contains("DRILL").contains("WHAT HAPPENED").contains("roar");
  }

  @Test
  void aRecordWithAnyByteChangedDoesNotAndTheLineIsNamed() throws IOException {
    Path record = record();
    byte[] bytes = Files.readAllBytes(record);
    for (int at = 0; at < bytes.length; at += 997) {
      bytes[at] ^= 1;
      Files.write(record, bytes);
      Shipped.Said said = Shipped.run("verify", record.toString());
      assertThat(said.exit()).as("byte %d", at).isEqualTo(Exit.NO);
      assertThat(said.out()).as("byte %d", at).contains("line " + line(bytes, at));
      bytes[at] ^= 1;
    }
  }

  @Test
  void aProgramIsToldTheSame() throws IOException {
    Path record = record();
    assertThat(Shipped.run("verify", "--json", record.toString()).out())
        .startsWith("{\"holds\":true,\"records\":[{")
        .contains("\"troubles\":[]");
    byte[] bytes = Files.readAllBytes(record);
    bytes[500] ^= 1;
    Files.write(record, bytes);
    Shipped.Said said = Shipped.run("verify", "--json", record.toString());
    assertThat(said.exit()).isEqualTo(Exit.NO);
    assertThat(said.out()).contains("\"holds\":false").contains("line " + line(bytes, 500));
  }

  private static int line(byte[] bytes, int at) {
    int line = 1;
    for (int i = 0; i < at; i++) {
      line += bytes[i] == '\n' ? 1 : 0;
    }
    return line;
  }

  @Test
  void anOrderMovedByOneTickWithAllHashesRebuiltIsNamed() throws IOException {
    Path record = record();
    List<String> lines = Files.readAllLines(record);
    int moved = indexOf(lines, "trip fuel-trip-superheater");
    long tick = tick(lines.get(moved));
    List<String> changed = new ArrayList<>(lines);
    changed.set(moved, lines.get(moved).replace("\"t\":" + tick, "\"t\":" + (tick + 1)));
    Files.write(record, rebuilt(changed));
    Shipped.Said said = Shipped.run("verify", record.toString());
    assertThat(said.exit()).isEqualTo(Exit.NO);
    assertThat(said.out()).contains("simulates differently");
    int named = Integer.parseInt(said.out().replaceAll("(?s).*?: line (\\d+) .*", "$1"));
    assertThat(named).isBetween(moved + 1, moved + 8);
  }

  private static int indexOf(List<String> lines, String part) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).contains(part)) {
        return i;
      }
    }
    throw new IllegalArgumentException(part);
  }

  private static long tick(String line) {
    return Long.parseLong(line.replaceAll(".*\"t\":(\\d+).*", "$1"));
  }

  private static List<String> rebuilt(List<String> lines) {
    Chain chain = new Chain();
    List<String> out = new ArrayList<>();
    out.add(lines.get(0));
    for (String line : lines.subList(1, lines.size())) {
      out.add(chain.append(line.replaceAll(",\"h\":\"[0-9a-f]{64}\"}$", "}")));
    }
    return out;
  }

  @Test
  void anUnfinishedRecordSaysSo() throws IOException {
    Path record = record();
    byte[] bytes = Files.readAllBytes(record);
    Files.write(record, java.util.Arrays.copyOf(bytes, bytes.length / 2));
    Shipped.Said said = Shipped.run("verify", record.toString());
    assertThat(said.exit()).isEqualTo(Exit.NO);
    assertThat(said.out()).contains("line ");
  }
}
