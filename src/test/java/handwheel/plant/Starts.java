package handwheel.plant;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import handwheel.water.SaturationTable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;

/** Reference conditions of the independent study the plant is held to, by their symbols. */
public final class Starts {
  private static final SaturationTable TABLE = SaturationTable.standard();
  private static final List<String[]> NAMES = rows("names.csv");
  private static final List<String[]> STATES = rows("states.csv");
  private static final JsonObject STARTS =
      JsonParser.parseString(text("starts.json")).getAsJsonObject().getAsJsonObject("starts");

  private Starts() {}

  /** Builds the plant in a start condition such as {@code 100} or {@code furnace-cold}. */
  public static Plant plant(String start) {
    return plant(start, PlantNumbers.usual());
  }

  /** Builds a plant of other sizes in a start condition. */
  public static Plant plant(String start, PlantNumbers numbers) {
    Plant plant = Plant.of(numbers, TABLE);
    plant.restore(states(start), ports(STARTS.getAsJsonObject(start).get("controls")));
    return plant;
  }

  static SortedMap<String, Double> states(String start) {
    int column = List.of(STATES.get(0)).indexOf(start);
    SortedMap<String, Double> values = new TreeMap<>();
    for (String[] row : STATES.subList(1, STATES.size())) {
      values.put(stateName(row[0]), Double.parseDouble(row[column]) * factor("state", row[0]));
    }
    flags(STARTS.getAsJsonObject(start).getAsJsonArray("lit"), values);
    return values;
  }

  static SortedMap<String, Double> ports(String start) {
    return ports(STARTS.getAsJsonObject(start).get("controls"));
  }

  static void flags(Iterable<JsonElement> lit, SortedMap<String, Double> values) {
    Iterator<JsonElement> next = lit.iterator();
    for (Burner burner : Burner.values()) {
      String name = burner.name().toLowerCase(Locale.ROOT);
      values.put("burner." + name + ".lit", next.next().getAsBoolean() ? 1.0 : 0.0);
    }
  }

  /** Shows every continuous state's value, in exact decimals. */
  static void eachState(String start, BiConsumer<String, BigDecimal> state) {
    int column = List.of(STATES.get(0)).indexOf(start);
    for (String[] row : STATES.subList(1, STATES.size())) {
      BigDecimal factor = new BigDecimal(row("state", row[0])[3]);
      state.accept(stateName(row[0]), new BigDecimal(row[column]).multiply(factor));
    }
  }

  static void eachPort(String start, BiConsumer<String, JsonElement> port) {
    each(STARTS.getAsJsonObject(start).get("controls"), port);
  }

  private static void each(JsonElement controls, BiConsumer<String, JsonElement> port) {
    for (Map.Entry<String, JsonElement> e : controls.getAsJsonObject().entrySet()) {
      if (e.getValue().isJsonArray()) {
        int i = 0;
        for (JsonElement one : e.getValue().getAsJsonArray()) {
          port.accept(e.getKey() + "[" + i++ + "]", one);
        }
      } else {
        port.accept(e.getKey(), e.getValue());
      }
    }
  }

  static SortedMap<String, Double> ports(JsonElement controls) {
    SortedMap<String, Double> positions = new TreeMap<>();
    each(
        controls,
        (symbol, value) -> positions.put(port(symbol).id(), position(symbol, value.getAsString())));
    return positions;
  }

  /** Returns the port a symbol of the study stands for. */
  public static Port port(String symbol) {
    return Port.ofId(row("port", symbol)[2]).orElseThrow();
  }

  /** Returns the position of a port for a value as the study writes it. */
  public static double position(String symbol, String value) {
    return switch (symbol + " " + value) {
      case "pump steam", "epsrc dft", "oilat S" -> 0;
      case "pump elec", "epsrc res", "oilat H" -> 1;
      case "pump hand", "oilat other" -> 2;
      case "pump off" -> 3;
      default -> number(symbol, Double.parseDouble(value));
    };
  }

  private static double number(String symbol, double value) {
    return symbol.equals("suct") ? Math.max(value - 1, 0) : value * factor("port", symbol);
  }

  static String stateName(String symbol) {
    return row("state", symbol)[2];
  }

  static double factor(String kind, String symbol) {
    return Double.parseDouble(row(kind, symbol)[3]);
  }

  private static String[] row(String kind, String symbol) {
    return NAMES.stream()
        .filter(r -> r[0].equals(kind) && r[1].equals(symbol))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(symbol));
  }

  private static List<String[]> rows(String file) {
    return text(file).lines().map(line -> line.split(",", -1)).toList();
  }

  static String text(String file) {
    try (InputStream in = Starts.class.getResourceAsStream(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static JsonElement json(String file) {
    return JsonParser.parseReader(
        new InputStreamReader(Starts.class.getResourceAsStream(file), StandardCharsets.UTF_8));
  }
}
