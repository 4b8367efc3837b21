package handwheel.plant;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.JsonElement;
import handwheel.water.SaturationTable;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.yaml.snakeyaml.Yaml;

/**
 * The ship's conditions are the reference start conditions. With {@code -Dgolden.update=true} the
 * files are written anew.
 */
class ConditionFilesTest {
  private static final Path FOLDER = Path.of("drills", "ships", "alder-reach");

  @ParameterizedTest
  @CsvSource({"full-power,100,1", "half-power,50,0", "quarter-power,25,0"})
  void theFilesHoldTheReferenceConditions(String id, String start, String bulkhead)
      throws IOException {
    String text = text(id, start, bulkhead);
    Path file = FOLDER.resolve(id + ".yaml");
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(file, text);
    }
    assertThat(Files.readString(file)).isEqualTo(text);
  }

  /** Nothing moves when nobody acts, the cross-connection open or not. */
  @ParameterizedTest
  @CsvSource({"full-power", "half-power", "quarter-power"})
  void aConditionReadBackIsSteady(String id) throws IOException {
    Map<String, Map<String, Object>> file =
        new Yaml().load(Files.readString(FOLDER.resolve(id + ".yaml")));
    Plant plant = Plant.of(PlantNumbers.usual(), SaturationTable.standard());
    plant.restore(
        numbers(requireNonNull(file.get("states"))), positions(requireNonNull(file.get("ports"))));
    Run.ticks(plant, 6000);
    assertThat(plant.value(Quantity.DRUM_PRESSURE))
        .isCloseTo(Physics.RATED_PA, within(0.01 * Plant.PSI));
    assertThat(plant.value(Quantity.DRUM_LEVEL)).isCloseTo(0, within(0.001));
  }

  private static SortedMap<String, Double> numbers(Map<String, Object> map) {
    SortedMap<String, Double> numbers = new TreeMap<>();
    map.forEach((name, value) -> numbers.put(name, Double.parseDouble(value.toString())));
    return numbers;
  }

  private static SortedMap<String, Double> positions(Map<String, Object> map) {
    SortedMap<String, Double> positions = new TreeMap<>();
    map.forEach(
        (id, value) -> {
          int word = Port.ofId(id).orElseThrow().words().indexOf(value.toString());
          positions.put(id, word >= 0 ? word : Double.parseDouble(value.toString()));
        });
    return positions;
  }

  private static String text(String id, String start, String bulkhead) {
    StringBuilder text = new StringBuilder();
    text.append("handwheel: condition 1\nid: ").append(id).append("\nstates:\n");
    Starts.eachState(start, (name, value) -> line(text, name, plain(value)));
    for (Map.Entry<String, Double> state : Starts.states(start).entrySet()) {
      if (state.getKey().startsWith("burner.")) {
        line(text, state.getKey(), plain(BigDecimal.valueOf(state.getValue())));
      }
    }
    text.append("ports:\n");
    Starts.eachPort(start, (symbol, value) -> port(text, symbol, value, bulkhead));
    return text.toString();
  }

  private static void port(StringBuilder text, String symbol, JsonElement value, String bulkhead) {
    Port port = Starts.port(symbol);
    if (port == Port.BULKHEAD_STOP) {
      line(text, port.id(), bulkhead);
    } else if (port.kind() == Port.Kind.CHOICE) {
      line(text, port.id(), port.words().get((int) Starts.position(symbol, value.getAsString())));
    } else {
      BigDecimal factor = BigDecimal.valueOf(Starts.factor("port", symbol));
      line(text, port.id(), plain(value.getAsBigDecimal().multiply(factor)));
    }
  }

  private static void line(StringBuilder text, String name, String value) {
    text.append("  ").append(name).append(": ").append(value).append('\n');
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
