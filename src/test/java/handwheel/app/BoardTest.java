package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a folder of demonstration runs to a signed decision, as a board member would do it. */
class BoardTest {
  @TempDir static Path dir;

  private static Path demo;

  @BeforeAll
  static void makeDemo() {
    demo = dir.resolve("demo");
    Shipped.Said said = Shipped.run("board", "--records", demo.toString(), "demo", "24");
    assertThat(said.exit()).as(said.err()).isZero();
  }

  private static String talk(String... lines) throws Usage, IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream print = new PrintStream(out, true, StandardCharsets.UTF_8);
    String text = String.join("\n", lines) + "\n";
    BoardCommand board =
        new BoardCommand(
            Shipped.DRILLS, new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    List<String> words =
        List.of(
            "--records", demo.toString(),
            "--keys", demo.resolve("demo-keys").toString(),
            "--me", "Demo qualifier");
    board.run(words, new Console(print, print));
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void everyDemonstrationRunVerifiesAndSaysWhatItIs() {
    Shipped.Said said = Shipped.run("verify", demo.toString());
    assertThat(said.out()).contains("24 records, 0 do not hold");
    assertThat(said.exit()).isZero();
    assertThat(demo.resolve("DEMO.txt")).exists();
  }

  @Test
  void fromAListToASignedDecision() throws Usage, IOException {
    assertThat(talk("list drill steam-leak")).contains("24 runs", "Demo Vale 1", "mark first");
    assertThat(talk("show 1")).contains("mark it first").doesNotContain("Critical acts");
    String said =
        talk(
            "mark 1 pass calm",
            "show 1",
            "decide \"Demo Vale 1\"",
            "steam-leak",
            "qualified",
            "In order and in time, twice.",
            "",
            "2099-01-01",
            "page \"Demo Vale 1\"");
    assertThat(said)
        .contains("score sheet", "Signed: qualified", "In order and in time", "Critical acts");
    assertThat(talk("mark 1 fail again")).contains("would be its");
    String minutes = Files.readString(demo.resolve("minutes"));
    assertThat(minutes).contains("\"k\":\"decided\"").doesNotContain("Vale");
  }

  @Test
  void aMinuteChangedIsNotTakenOnFrom() throws Usage, IOException {
    talk("statement \"Demo Ferrar 2\" ready for the board");
    Path file = demo.resolve("minutes");
    String whole = Files.readString(file);
    Files.writeString(file, whole.replace("ready for", "not ready for"));
    assertThat(talk("statement \"Demo Ferrar 2\" again")).contains("does not hold");
    assertThat(Shipped.run("verify", demo.toString()).out()).contains("minutes: line");
    Files.writeString(file, whole);
  }

  @Test
  void looksAreNoDecisions() throws Usage, IOException {
    String said =
        talk(
            "replay 5 every 120", "figures steam-leak", "ledger", "agreement steam-leak", "nosuch");
    assertThat(said)
        .contains("seen", "interval", "finished", "kappa", "is nothing one can say here");
  }

  @Test
  void aDeletedRunShowsAndAFolderTravelsOnce() throws Usage, IOException {
    Path out = dir.resolve("out");
    assertThat(talk("export " + out)).contains("24 records written");
    assertThat(out.resolve("names")).doesNotExist();
    assertThat(talk("import " + out)).contains("0 records taken in, 24 were here already");
    List<Path> records = new ArrayList<>();
    try (var files = Files.list(out)) {
      files.filter(f -> f.toString().endsWith(".hwr")).sorted().forEach(records::add);
    }
    Files.delete(records.get(7));
    Shipped.Said said = Shipped.run("verify", out.toString());
    assertThat(said.exit()).isEqualTo(Exit.NO);
    assertThat(said.out()).contains("run 8 was finished, its record").contains("is not here");
  }

  @Test
  void papersAreWritten() throws Usage, IOException {
    Path pack = dir.resolve("pack.html");
    Path csv = dir.resolve("runs.csv");
    talk("pack \"Demo Vale 1\" " + pack, "csv runs " + csv);
    assertThat(Files.readString(pack)).contains("Decisions of the board");
    assertThat(Files.readString(csv).lines()).hasSize(25);
  }
}
