package handwheel.app;

import handwheel.debrief.OwnLines;
import handwheel.screen.Text;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The trainee's own three lines, kept in a file beside the record. They are not scored and stand
 * outside the chain, so the record holds with them and without them.
 */
final class OwnFile {
  private static final String END = ".own.txt";

  private final Path file;

  OwnFile(Path record) {
    String name = record.getFileName().toString().replaceFirst("\\.hwr$", "");
    this.file = record.resolveSibling(name + END);
  }

  /**
   * Finds them: in the file named, else beside the record, else by asking whoever is at a terminal.
   *
   * @throws Usage if the file named does not have three lines
   */
  Optional<OwnLines> find(Optional<String> named, boolean isSilent, Console console)
      throws Usage, IOException {
    if (named.isPresent()) {
      return Optional.of(keep(read(named.get())));
    }
    if (Files.isRegularFile(file)) {
      return OwnLines.of(Files.readAllLines(file));
    }
    if (isSilent) {
      return Optional.empty();
    }
    if (!DrillFace.isAttended()) {
      console.message("Nobody is at a terminal: the trainee's own three lines are not asked for.");
      return Optional.empty();
    }
    Optional<OwnLines> own = ask(console);
    return own.isPresent() ? Optional.of(keep(own.get())) : own;
  }

  private static OwnLines read(String name) throws Usage, IOException {
    if (!Files.isRegularFile(Path.of(name))) {
      throw new Usage("there is no file `" + name + "`.");
    }
    Optional<OwnLines> own = OwnLines.of(Files.readAllLines(Path.of(name)));
    if (own.isEmpty()) {
      throw new Usage("`" + name + "`: three lines are needed: " + OwnLines.QUESTIONS);
    }
    return own.get();
  }

  private OwnLines keep(OwnLines own) throws IOException {
    List<String> lines = own.lines().stream().map(Text::harmless).toList();
    Files.write(file, lines);
    return own;
  }

  private static Optional<OwnLines> ask(Console console) throws IOException {
    console.result("DRILL. Before you read anything: three lines of your own. Empty: skip.");
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    List<String> lines = new ArrayList<>();
    for (String question : OwnLines.QUESTIONS) {
      console.result(question);
      String line = in.readLine();
      if (line == null || line.isBlank()) {
        break;
      }
      lines.add(line);
    }
    return OwnLines.of(lines);
  }
}
