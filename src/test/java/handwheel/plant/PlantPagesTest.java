package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.plant.PlantPages.Kind;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * The pages of docs/plant keep step with the code: each state, input, output and size stands in a
 * table, with the unit, range and usual value the code has, and nothing else does.
 */
class PlantPagesTest {
  private static final PlantPages PAGES = PlantPages.ofFolder();

  @Test
  void everyStateIsOnAPage() {
    SortedMap<String, List<String>> truth = new TreeMap<>();
    Plant.of(PlantNumbers.usual()).states().forEach(name -> truth.put(name, List.of()));
    assertThat(PAGES.breaches(Kind.STATE, truth)).isEmpty();
  }

  @Test
  void everyInputIsOnAPage() {
    SortedMap<String, List<String>> truth = new TreeMap<>();
    for (Port port : Port.values()) {
      truth.put(port.id(), List.of(position(port)));
    }
    assertThat(PAGES.breaches(Kind.INPUT, truth)).isEmpty();
  }

  @Test
  void everyOutputIsOnAPage() {
    SortedMap<String, List<String>> truth = new TreeMap<>();
    for (Quantity quantity : Quantity.values()) {
      truth.put(quantity.id(), List.of(quantity.unit().symbol()));
    }
    assertThat(PAGES.breaches(Kind.OUTPUT, truth)).isEmpty();
  }

  @Test
  void everySizeIsOnAPage() {
    SortedMap<String, List<String>> truth = new TreeMap<>();
    for (PlantNumber size : PlantNumber.values()) {
      truth.put(size.id(), List.of(size.unitText(), figure(size.usual())));
    }
    assertThat(PAGES.breaches(Kind.SIZE, truth)).isEmpty();
  }

  /** Six figures, as a person writes them. */
  private static String figure(double usual) {
    BigDecimal six = new BigDecimal(usual).round(new MathContext(6)).stripTrailingZeros();
    return six.signum() == 0 ? "0" : six.toPlainString();
  }

  private static String position(Port port) {
    return switch (port.kind()) {
      case CHOICE -> "one of " + String.join(", ", port.words());
      case SWITCH -> "0 or 1";
      case FRACTION -> "0 to " + figure(port.max());
      case SETTING -> port.unit().symbol();
    };
  }

  @Test
  void aPageOutOfStepIsTold() {
    PlantPages pages =
        PlantPages.of(
            List.of(
                "| output | unit | meaning |",
                "|---|---|---|",
                "| `a.b` `c.d` | K | right |",
                "| `old` | K | gone |",
                "| `wrong` | m | in feet |",
                "",
                "| other | unit |",
                "|---|---|",
                "| `left` | K |"));
    SortedMap<String, List<String>> truth = new TreeMap<>();
    truth.put("a.b", List.of("K"));
    truth.put("c.d", List.of("K"));
    truth.put("left", List.of("K"));
    truth.put("wrong", List.of("ft"));
    assertThat(pages.breaches(Kind.OUTPUT, truth))
        .containsExactly(
            "old: no such output; take it out of docs/plant",
            "left: add a row to a table of kind output in docs/plant",
            "wrong: the page says [m, in feet], the code [ft]");
  }
}
