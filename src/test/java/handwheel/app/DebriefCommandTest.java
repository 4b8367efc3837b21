package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code debrief} on a record on disk. */
final class DebriefCommandTest {
  @TempDir Path folder;

  private Path record() throws IOException {
    Path orders = folder.resolve("orders.txt");
    Files.writeString(orders, "60 everyone leave\n70 report leak-report to watch-engineer\n");
    Shipped.run(
        "rehearse",
        "steam-leak",
        "--seed",
        "7",
        "--orders",
        orders.toString(),
        "--records",
        folder.toString());
    return folder.resolve("0001-steam-leak-7.hwr");
  }

  @Test
  void ownLinesAreKeptBesideTheRecordWhichStillHolds() throws IOException {
    Path record = record();
    Path own = Files.write(folder.resolve("mine"), List.of("A roar", "A leak", "Out at once"));
    String first = Shipped.run("debrief", record.toString(), "--own", own.toString()).out();
    assertThat(first).contains("Saw first").contains("A roar");
    assertThat(folder.resolve("0001-steam-leak-7.own.txt")).content().startsWith("A roar\n");
    assertThat(Shipped.run("debrief", record.toString()).out()).isEqualTo(first);
    assertThat(Shipped.run("verify", record.toString()).exit()).isZero();
  }

  @Test
  void twoLinesAreNotThree() throws IOException {
    Path own = Files.write(folder.resolve("mine"), List.of("A roar", "", "A leak"));
    Shipped.Said said = Shipped.run("debrief", record().toString(), "--own", own.toString());
    assertThat(said.exit()).isEqualTo(Exit.NOT_UNDERSTOOD);
    assertThat(said.err()).contains("three lines are needed");
  }

  @Test
  void jsonIsOneObjectAlsoForARecordThatDoesNotHold() throws IOException {
    Path record = record();
    var whole = JsonParser.parseString(Shipped.run("debrief", record.toString(), "--json").out());
    assertThat(whole.getAsJsonObject().get("holds").getAsBoolean()).isTrue();
    assertThat(whole.getAsJsonObject().get("costs").getAsJsonArray()).isNotEmpty();
    Files.writeString(record, Files.readString(record).replace("everyone leave", "everyone Leave"));
    var broken = JsonParser.parseString(Shipped.run("debrief", record.toString(), "--json").out());
    assertThat(broken.getAsJsonObject().get("holds").getAsBoolean()).isFalse();
    assertThat(broken.getAsJsonObject().has("costs")).isFalse();
  }

  @Test
  void aBrokenRecordWarnsBeforeAnythingElse() throws IOException {
    Path record = record();
    Files.writeString(record, Files.readString(record).replace("everyone leave", "everyone Leave"));
    Shipped.Said said = Shipped.run("debrief", record.toString());
    assertThat(said.exit()).isEqualTo(Exit.NO);
    assertThat(said.out()).startsWith("THIS RECORD DOES NOT HOLD");
  }

  @Test
  void thePageIsWrittenAndTheMomentTold() throws IOException {
    Path record = record();
    Path html = folder.resolve("d.html");
    assertThat(Shipped.run("debrief", record.toString(), "--html", html.toString()).out())
        .endsWith("HTML: " + html + System.lineSeparator());
    assertThat(html).content().startsWith("<!DOCTYPE html>").endsWith("</html>\n");
    assertThat(Shipped.run("debrief", record.toString(), "--at", "0:23").out())
        .contains("You to everyone: leave.");
    assertThat(Shipped.run("debrief", record.toString(), "--at", "noon").err())
        .contains("seconds from the first cue");
  }
}
