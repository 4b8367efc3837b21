package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.debrief.Card;
import handwheel.debrief.CardHtml;
import handwheel.debrief.CardText;
import handwheel.debrief.Scripts;
import handwheel.drill.Mode;
import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import handwheel.proof.WitnessText;
import handwheel.reader.ScriptReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What makes a drill leader's work easier. */
final class ComfortTest {
  private static final Path SHIPS = Path.of("drills/ships");

  private final ByteArrayOutputStream told = new ByteArrayOutputStream();
  private final Console console = console();

  @TempDir private Path folder;

  private Console console() {
    PrintStream print = new PrintStream(told, true, StandardCharsets.UTF_8);
    return new Console(print, print);
  }

  private Drills drills() throws IOException {
    try (Stream<Path> files = Files.walk(SHIPS)) {
      for (Path file : files.sorted().toList()) {
        Path copy = folder.resolve("ships").resolve(SHIPS.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(file, copy);
        }
      }
    }
    return new Drills(folder);
  }

  @Test
  void theStarterIsSoundAsItStands() throws Exception {
    Drills drills = drills();

    assertThat(new NewCommand(drills).run(List.of("my-drill"), console)).isEqualTo(Exit.YES);
    assertThat(new CheckCommand(drills).run(List.of("my-drill"), console)).isEqualTo(Exit.YES);
    assertThat(told.toString(StandardCharsets.UTF_8)).contains("1 read, 0 findings");
    assertThat(folder.resolve("my-drill.proof")).exists();
  }

  @Test
  void newWritesOverNothingAndKeepsToTheFolder() throws Exception {
    Drills drills = drills();
    Files.writeString(folder.resolve("mine.yaml"), "mine");

    assertThat(Main.run(List.of("new", "../out"), console)).isEqualTo(Exit.NOT_UNDERSTOOD);
    org.assertj.core.api.Assertions.assertThatThrownBy(
            () -> new NewCommand(drills).run(List.of("mine"), console))
        .isInstanceOf(Usage.class);
    assertThat(folder.resolve("mine.yaml")).hasContent("mine");
  }

  private static Scripts.Found steamLeak() throws IOException {
    return new Drills(Path.of("drills"))
        .load(Path.of("drills/steam-leak.yaml"))
        .found()
        .orElseThrow();
  }

  @Test
  void theCardSaysCautionsFirstAndEveryStepWithItsReason() throws IOException {
    Scripts.Found found = steamLeak();
    List<String> lines = CardText.lines(Card.of(found));
    String text = String.join("\n", lines);

    assertThat(lines.get(0)).startsWith("DRILL");
    assertThat(lines).allMatch(l -> l.length() <= 80);
    assertThat(text.indexOf("\nCautions")).isPositive().isLessThan(text.indexOf("\nBrief"));
    assertThat(text.indexOf("\nBrief")).isLessThan(text.indexOf("\nExpected acts"));
    assertThat(found.casualty().response())
        .allMatch(s -> text.contains("  - " + s.id() + "\n"))
        .allMatch(s -> text.replaceAll("\\s+", " ").contains(s.grade().why()));
  }

  @Test
  void theCardAsAPageIsEscaped() throws IOException {
    Scripts.Found found = steamLeak();
    String page = CardHtml.page(Card.of(found));
    String odd = CardHtml.page(new Card("<b>&\"", List.of()));

    assertThat(page)
        .startsWith("<!DOCTYPE html>\n<html lang=\"en\">")
        .contains("<th scope=\"col\">reason");
    assertThat(odd).contains("&lt;b&gt;&amp;&quot;").doesNotContain("<b>");
  }

  /** The witness's own run, recorded as a witness, does it right with other seeds too. */
  @Test
  void aRunBecomesAWitness() throws IOException {
    Scripts.Found found = steamLeak();
    List<Entry> run = entries(found, 1);
    String recorded = String.join("\n", WitnessText.of(run)) + "\n";
    String script = Files.readString(Path.of("drills/steam-leak.yaml"));
    byte[] again =
        (script.substring(0, script.indexOf("witness:\n")) + recorded)
            .getBytes(StandardCharsets.UTF_8);
    var read = ScriptReader.read("again.yaml", again, found.ship());

    assertThat(read.findings()).isEmpty();
    Scripts.Found second = new Scripts.Found(found.ship(), read.value().orElseThrow());
    assertThat(orders(entries(second, 1))).isEqualTo(orders(run));
  }

  private static List<String> orders(List<Entry> entries) {
    return entries.stream()
        .filter(Entry.OrderSaid.class::isInstance)
        .map(e -> ((Entry.OrderSaid) e).say())
        .collect(Collectors.toList());
  }

  private static List<Entry> entries(Scripts.Found found, long seed) {
    Rehearsal.Setup setup =
        new Rehearsal.Setup(found.ship(), found.casualty(), seed, Mode.PRACTICE);
    return Rehearsal.play(
        setup, new WitnessPlayer(found.casualty(), found.ship()), e -> {}, s -> {});
  }

  @Test
  void questionsAreReadWithTheirAnswers() throws Exception {
    Drills drills = drills();
    new NewCommand(drills).run(List.of("asked"), console);
    Optional<Scripts.Found> found = drills.load(folder.resolve("asked.yaml")).found();

    assertThat(found.orElseThrow().casualty().questions()).hasSize(2);
    assertThat(CardText.lines(Card.of(found.orElseThrow())))
        .contains("  - Why is the superheater secured first?");
  }
}
