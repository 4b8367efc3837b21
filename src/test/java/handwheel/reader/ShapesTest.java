package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import handwheel.diagnostics.SourceSpot;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The language as data. */
final class ShapesTest {
  /** Plain texts YAML 1.1 takes for booleans (YAML 1.1 type repository, "bool"). */
  private static final Set<String> BOOLEANS =
      new LinkedHashSet<>(List.of("y", "n", "yes", "no", "true", "false", "on", "off"));

  private static List<Key> keys() {
    List<Key> keys = new ArrayList<>();
    Stream.of(ScriptReader.SHAPE, ShipReader.SHAPE, NumbersFile.SHAPE, ConditionFile.SHAPE)
        .forEach(shape -> collect(shape, keys));
    ConditionReader.SHAPES.byKey().values().forEach(shape -> collect(shape, keys));
    return keys;
  }

  private static void collect(Shape shape, List<Key> keys) {
    for (Key key : shape.keys()) {
      keys.add(key);
      key.of().forEach(inner -> collect(inner, keys));
    }
  }

  @Test
  void noKeyIsABooleanOfYaml11() {
    assertThat(keys())
        .hasSizeGreaterThan(100)
        .extracting(k -> k.name().toLowerCase(Locale.ROOT))
        .doesNotContainAnyElementsOf(BOOLEANS);
  }

  @Test
  void everyKeySaysWhatItMeans() {
    assertThat(keys()).allMatch(k -> !k.meaning().isBlank() && !k.meaning().endsWith("."));
  }

  @Test
  void wordsAndMappingsAreListed() {
    assertThat(keys())
        .filteredOn(k -> k.form() == Form.LIST || k.form() == Form.MAPPING)
        .allMatch(k -> !k.of().isEmpty());
  }

  @Test
  void onlyDeclaredKeysCanBeRead() {
    Shape shape = Shape.of("a thing", Key.may("id", Form.ID, "its id"));
    YamlNode node = new YamlNode.Mapping(List.of(), false, new SourceSpot("a.yaml", 1, 1));
    MapNode map = MapNode.of(node, shape, new Findings()).orElseThrow();

    assertThatThrownBy(() -> map.has("name")).isInstanceOf(IllegalArgumentException.class);
  }
}
