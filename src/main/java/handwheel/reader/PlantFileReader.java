package handwheel.reader;

import handwheel.plant.PlantNumber;
import handwheel.plant.PlantNumbers;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads the sizes of a plant; what is not named keeps its usual value. */
final class PlantFileReader {
  private static final List<String> IDS =
      Arrays.stream(PlantNumber.values()).map(PlantNumber::id).toList();

  private static final Shape NUMBERS =
      new Shape(
          "the numbers",
          Arrays.stream(PlantNumber.values())
              .map(n -> Key.may(n.id(), Form.NUMBER, n.meaning()))
              .toList());

  private static final Shape FILE =
      Shape.of(
          "a plant",
          Header.key(),
          Key.must("numbers", Form.MAPPING, "sizes that differ from the usual").with(NUMBERS));

  private final Findings findings;

  PlantFileReader(Findings findings) {
    this.findings = findings;
  }

  Optional<PlantNumbers> read(YamlNode node) {
    return MapNode.of(node, FILE, findings).flatMap(this::file);
  }

  private Optional<PlantNumbers> file(MapNode map) {
    Header.check(map, "plant");
    return map.get("numbers", MapNode.reader(NUMBERS, PlantFileReader::numbers));
  }

  private static Optional<PlantNumbers> numbers(MapNode map) {
    SortedMap<String, Double> changes = new TreeMap<>();
    for (String id : map.present(IDS)) {
      map.get(id, PlantFileReader::positive).ifPresent(v -> changes.put(id, v));
    }
    return Optional.of(PlantNumbers.usual().with(changes));
  }

  private static Optional<Double> positive(YamlNode node, Findings findings) {
    Optional<Double> value = Scalars.number(node, findings);
    if (value.isPresent() && value.get() <= 0) {
      findings.add(FindingId.OUT_OF_RANGE, node.spot(), "a size must be above 0", "");
      return Optional.empty();
    }
    return value;
  }
}
