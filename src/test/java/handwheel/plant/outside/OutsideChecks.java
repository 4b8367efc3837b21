package handwheel.plant.outside;

import handwheel.plant.PlantNumbers;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;

/**
 * Every check of the plant against the world outside. As a function it takes the kinds of checks
 * wanted and factors for plant numbers by id, and returns the names of the checks that fail, so
 * that it can be asked from another class loader.
 */
public final class OutsideChecks
    implements BiFunction<List<String>, SortedMap<String, Double>, List<String>> {
  static final List<String> KINDS = List.of("steam", "leak", "drum", "ship", "fire", "step");

  static List<Figure> figures() {
    return figures(KINDS, new TreeMap<>());
  }

  private static List<Figure> figures(List<String> kinds, SortedMap<String, Double> factors) {
    List<Figure> figures = new ArrayList<>();
    for (String kind : kinds) {
      figures.addAll(figures(kind, factors));
    }
    return figures;
  }

  private static List<Figure> figures(String kind, SortedMap<String, Double> factors) {
    PlantNumbers ship = Altered.ship(factors);
    return switch (kind) {
      case "steam" -> SteamCheck.figures();
      case "leak" -> LeakCheck.figures(ship);
      case "drum" -> DrumCheck.figures(factors);
      case "ship" -> ShipDrumCheck.figures(ship);
      case "fire" -> FireCheck.figures(ship);
      case "step" -> StepCheck.figures(ship);
      default -> throw new IllegalArgumentException(kind);
    };
  }

  @Override
  public List<String> apply(List<String> kinds, SortedMap<String, Double> factors) {
    TreeSet<String> failing = new TreeSet<>();
    for (Figure figure : figures(kinds, factors)) {
      if (!figure.holds()) {
        failing.add(figure.check());
      }
    }
    return List.copyOf(failing);
  }
}
