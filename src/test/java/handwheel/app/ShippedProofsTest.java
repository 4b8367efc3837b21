package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every shipped script may be run as scored; a changed one may not. */
final class ShippedProofsTest {
  private static final Path FOLDER = Path.of("drills");

  @Test
  void everyShippedScriptHasAProofThatHolds() throws IOException {
    Drills drills = new Drills(FOLDER);
    assertThat(drills.scripts()).isNotEmpty();
    for (String name : drills.scripts()) {
      Path file = FOLDER.resolve(name + ".yaml");
      assertThat(Proofs.lack(file, drills.load(file).found().orElseThrow())).isEmpty();
    }
  }

  @Test
  void aChangedScriptIsNotRunAsScored(@TempDir Path folder) throws IOException {
    Path changed = folder.resolve("steam-leak.yaml");
    Files.writeString(changed, Files.readString(FOLDER.resolve("steam-leak.yaml")) + "# changed\n");
    Files.copy(FOLDER.resolve("steam-leak.proof"), folder.resolve("steam-leak.proof"));

    assertThat(scored(changed)).contains("was made for another script", "Run `check ");
    Files.delete(folder.resolve("steam-leak.proof"));
    assertThat(scored(changed)).contains("has no proof", "Run `check ");
  }

  private static String scored(Path script) {
    ByteArrayOutputStream told = new ByteArrayOutputStream();
    PrintStream print = new PrintStream(told, true, StandardCharsets.UTF_8);
    List<String> words = List.of("drill", script.toString(), "--mode", "scored", "--lines");
    assertThat(Main.run(words, new Console(print, print))).isEqualTo(Exit.NO);
    return told.toString(StandardCharsets.UTF_8);
  }
}
