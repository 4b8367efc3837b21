package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command line: results, messages and exit codes. */
class CommandsTest {
  @Test
  void jsonIsOneObjectWithEveryKey() {
    Shipped.Said said = Shipped.run("rehearse", "steam-leak", "--seed", "7", "--json");
    assertThat(said.exit()).isZero();
    JsonObject o = JsonParser.parseString(said.out()).getAsJsonObject();
    assertThat(o.keySet())
        .contains("drill", "seed", "score", "verdict", "lost", "record", "digest");
    assertThat(o.get("verdict").getAsString()).isEqualTo("pass");
    assertThat(o.get("record").isJsonNull()).isTrue();
  }

  @Test
  void lostPointsCarryTheirReason(@TempDir Path dir) throws IOException {
    Path none = Files.writeString(dir.resolve("none.txt"), "# nobody says anything\n");
    Shipped.Said said =
        Shipped.run("rehearse", "steam-leak", "--orders", none.toString(), "--json");
    assertThat(said.exit()).isEqualTo(Exit.NO);
    JsonObject lost =
        JsonParser.parseString(said.out())
            .getAsJsonObject()
            .getAsJsonArray("lost")
            .get(0)
            .getAsJsonObject();
    assertThat(lost.keySet()).contains("points", "class", "step", "tick", "why", "basis");
  }

  @Test
  void aMalformedScriptGivesPlacesAndExitTwo(@TempDir Path dir) throws IOException {
    String text = Files.readString(Path.of("drills/steam-leak.yaml"));
    Path bad =
        Files.writeString(
            dir.resolve("bad.yaml"),
            text.replace("hole: {from: 0.75 in", "hole: {from: 0.75")
                .replace("main-run", "man-run"));
    for (String command : new String[] {"check", "rehearse", "drill"}) {
      Shipped.Said said = Shipped.run(command, bad.toString());
      assertThat(said.exit()).as(command).isEqualTo(Exit.NOT_UNDERSTOOD);
      assertThat(said.err())
          .contains("bad.yaml:36:16")
          .contains("script.missing-unit")
          .contains("`main-run`")
          .doesNotContain("Exception")
          .doesNotContain("\tat ");
    }
  }

  @Test
  void wrongUsageOffersTheNearestWord() {
    assertThat(Shipped.run("rehears", "steam-leak").err()).contains("`rehearse`");
    assertThat(Shipped.run("rehearse", "steam-lek").err()).contains("`steam-leak`");
    assertThat(Shipped.run("rehearse", "steam-leak", "--sed", "1").err()).contains("`--seed`");
    assertThat(Shipped.run("rehearse", "steam-leak", "--seed", "x").exit())
        .isEqualTo(Exit.NOT_UNDERSTOOD);
  }

  @Test
  void ordersAreReadWithTheirPlace(@TempDir Path dir) throws IOException {
    Path file =
        Files.writeString(dir.resolve("o.txt"), "1 everyone leave\n2 checkman shut man-stop\n");
    Shipped.Said said = Shipped.run("rehearse", "steam-leak", "--orders", file.toString());
    assertThat(said.exit()).isEqualTo(Exit.NOT_UNDERSTOOD);
    assertThat(said.err()).contains("o.txt:2:17").contains("`main-stop`");
  }

  @Test
  void theTraceHasGaugesAndTruth(@TempDir Path dir) throws IOException {
    Path trace = dir.resolve("t.csv");
    Shipped.run("rehearse", "steam-leak", "--trace", trace.toString());
    assertThat(Files.readAllLines(trace).get(0))
        .startsWith("tick,seconds,gauge/drum-pressure psig")
        .contains("plant/drum.pressure Pa");
  }

  @Test
  void everyShippedScriptIsSound() {
    Shipped.Said said = Shipped.run("check", "steam-leak");
    assertThat(said.exit()).as(said.err()).isZero();
  }
}
