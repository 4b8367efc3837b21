package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.ship.Ship;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The examples of the language's pages are sound, and together they show every key there is. */
final class ExamplesTest {
  private static final Path FOLDER = Path.of("docs/scripts/examples");
  private static final Ship SHIP =
      ShipReader.read(TestFiles.folder(TestFiles.ALDER_REACH)).value().orElseThrow();
  private static final Pattern KEY = Pattern.compile("[{,\\n -]\\s*([a-z]+):(?=\\s)");

  static Stream<Path> examples() {
    return TestFiles.files(FOLDER, ".yaml").stream();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void exampleHasNoFindings(Path file) {
    Read<Casualty> read = ScriptReader.read(file.toString(), TestFiles.bytes(file), SHIP);

    assertThat(read.findings()).isEmpty();
    assertThat(read.value()).isPresent();
  }

  /** Faults have a page and a test of their own. */
  @Test
  void everyKeyOfTheLanguageIsShown() {
    TreeSet<String> shown = new TreeSet<>();
    Stream.concat(examples(), Stream.of(Path.of("drills/steam-leak.yaml")))
        .forEach(f -> keysIn("\n" + TestFiles.text(f), shown));

    assertThat(shown).containsAll(keys());
  }

  @Test
  void everyKeyStandsInTheReference() {
    String page = TestFiles.text(Path.of("docs/scripts/reference.md"));

    assertThat(keys()).allSatisfy(k -> assertThat(page).contains("`" + k + "`"));
  }

  private static void keysIn(String text, Set<String> keys) {
    Matcher m = KEY.matcher(text);
    while (m.find()) {
      keys.add(m.group(1));
    }
  }

  private static Set<String> keys() {
    Set<String> keys = new TreeSet<>();
    List<Shape> seen = new ArrayList<>();
    collect(ScriptReader.SHAPE, keys, seen);
    ConditionReader.SHAPES.byKey().values().forEach(s -> collect(s, keys, seen));
    return keys;
  }

  private static void collect(Shape shape, Set<String> keys, List<Shape> seen) {
    if (FaultReader.SHAPES.containsValue(shape) || seen.contains(shape)) {
      return;
    }
    seen.add(shape);
    for (Key key : shape.keys()) {
      keys.add(key.name());
      key.of().forEach(inner -> collect(inner, keys, seen));
    }
  }
}
