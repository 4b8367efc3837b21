package handwheel.reader;

import handwheel.plant.PlantNumber;
import handwheel.plant.PlantNumbers;
import handwheel.units.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads the sizes of a ship's plant. */
final class NumbersFile {
  static final Shape SHAPE =
      Shape.of(
          "the plant's sizes",
          Header.key("plant"),
          Key.must("numbers", Form.NAMED, "each size that is not the usual one, by its name"));

  private NumbersFile() {}

  static Optional<PlantNumbers> read(YamlNode root, Findings findings) {
    return Header.root(root, SHAPE, "plant", findings)
        .flatMap(map -> map.get("numbers", NumbersFile::numbers));
  }

  private static Optional<PlantNumbers> numbers(YamlNode node, Findings findings) {
    if (!(node instanceof YamlNode.Mapping mapping)) {
      Scalars.wrongForm(node, "a mapping of sizes", findings);
      return Optional.empty();
    }
    SortedMap<String, Double> changes = new TreeMap<>();
    for (YamlNode.Entry entry : mapping.entries()) {
      Optional<PlantNumber> number = number(entry.key(), findings);
      Optional<Double> value = number.flatMap(n -> value(entry.value(), n, findings));
      value.ifPresentOrElse(v -> changes.put(entry.key().text(), v), findings::lose);
    }
    return Optional.of(PlantNumbers.usual().with(changes));
  }

  private static Optional<PlantNumber> number(YamlNode.Scalar key, Findings findings) {
    Optional<PlantNumber> number = PlantNumber.ofId(key.text());
    if (number.isEmpty()) {
      List<String> ids = Arrays.stream(PlantNumber.values()).map(PlantNumber::id).toList();
      findings.add(
          FindingId.UNKNOWN_NUMBER,
          key.spot(),
          Say.quoted(key.text()) + " is no size of the plant",
          Say.offer(key.text(), ids));
    }
    return number;
  }

  private static Optional<Double> value(YamlNode node, PlantNumber number, Findings findings) {
    return Scalars.scalar(node, number.unitText(), findings)
        .flatMap(s -> value(s, number, findings).filter(v -> isPositive(v, s, findings)));
  }

  /** A bare number is in the size's SI unit; that unit may be written behind it, or one like it. */
  private static Optional<Double> value(
      YamlNode.Scalar scalar, PlantNumber number, Findings findings) {
    String unit = " " + number.unitText();
    String text = scalar.text();
    String figure = text.endsWith(unit) ? text.substring(0, text.length() - unit.length()) : text;
    if (Scalars.isNumber(figure)) {
      return Optional.of(Double.parseDouble(figure));
    }
    return Unit.ofSymbol(number.unitText())
        .map(u -> Measures.measure(scalar, Wanted.of(u.dimension()), findings).map(m -> m.si()))
        .orElseGet(() -> noFigure(scalar, number, findings));
  }

  private static Optional<Double> noFigure(
      YamlNode.Scalar scalar, PlantNumber number, Findings findings) {
    findings.add(
        FindingId.WRONG_UNIT,
        scalar.spot(),
        Say.quoted(scalar.text()) + " is no figure in " + Say.quoted(number.unitText()),
        "This size is read in that unit only.");
    return Optional.empty();
  }

  private static boolean isPositive(double value, YamlNode.Scalar scalar, Findings findings) {
    boolean isPositive = value > 0 && value <= Limits.FIGURE;
    if (!isPositive) {
      findings.add(
          FindingId.OUT_OF_RANGE,
          scalar.spot(),
          Say.quoted(scalar.text()) + " is no size; a size is larger than 0",
          "");
    }
    return isPositive;
  }
}
