package handwheel.plant;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.yaml.snakeyaml.Yaml;

/** The sizes of a shipped ship. */
final class ShipNumbers {
  private ShipNumbers() {}

  static PlantNumbers of(String ship) {
    try {
      String text = Files.readString(Path.of("drills", "ships", ship, "plant.yaml"));
      Map<String, Map<String, Object>> file = new Yaml().load(text);
      TreeMap<String, Double> numbers = new TreeMap<>();
      requireNonNull(file.get("numbers"))
          .forEach((id, value) -> numbers.put(id, Double.parseDouble(figure(value.toString()))));
      return PlantNumbers.usual().with(numbers);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A size in SI with its unit behind it, or a bare one. */
  private static String figure(String size) {
    int blank = size.indexOf(' ');
    return blank < 0 ? size : size.substring(0, blank);
  }
}
