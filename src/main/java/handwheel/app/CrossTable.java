package handwheel.app;

import handwheel.debrief.Scripts;
import handwheel.proof.Crossed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The right orders of each script said in every other, as a table: who fails how many acts. */
final class CrossTable {
  private final List<Crossed.Script> scripts;
  private final List<List<List<Crossed.Cell>>> rows = new ArrayList<>();

  private CrossTable(List<Crossed.Script> scripts) {
    this.scripts = List.copyOf(scripts);
  }

  /** Plays every script with every other's orders. */
  static CrossTable of(List<Scripts.Found> found) {
    List<Crossed.Script> scripts =
        found.stream().map(f -> Crossed.Script.of(f.casualty(), f.ship(), workbench(f))).toList();
    CrossTable table = new CrossTable(scripts);
    for (int i = 0; i < scripts.size(); i++) {
      Crossed.Script happens = scripts.get(i);
      Workbench workbench = workbench(found.get(i));
      table.rows.add(scripts.stream().map(s -> Crossed.of(happens, s, workbench)).toList());
    }
    return table;
  }

  private static Workbench workbench(Scripts.Found found) {
    return new Workbench(found.casualty(), found.ship());
  }

  /** Returns what cannot be told apart: one case happened, the orders of another failed nothing. */
  List<Crossed.Cell> clean() {
    return rows.stream()
        .flatMap(List::stream)
        .flatMap(List::stream)
        .filter(Crossed.Cell::isClean)
        .toList();
  }

  /** Prints the table and below it every pair that cannot be told apart. */
  List<String> text() {
    List<String> lines = new ArrayList<>();
    lines.add("Critical acts failed when the right orders of a column are said in a row's drill,");
    lines.add("the fewest over all drawn cases; 0 cannot be told apart, a blank is its own.");
    lines.add("");
    lines.add(
        name("")
            + IntStream.rangeClosed(1, scripts.size())
                .mapToObj(i -> String.format(Locale.ROOT, "%3d", i))
                .collect(Collectors.joining()));
    for (int i = 0; i < scripts.size(); i++) {
      lines.add(row(i));
    }
    lines.add("");
    clean()
        .forEach(
            c ->
                lines.add(
                    c.happened()
                        + " < "
                        + c.ordered()
                        + ": "
                        + c.points()
                        + " points, none failed"));
    return lines;
  }

  private String row(int i) {
    String head = name((i + 1) + " " + scripts.get(i).casualty().id());
    return rows.get(i).stream()
        .map(
            cells ->
                cells.stream().mapToInt(Crossed.Cell::failed).min().stream()
                    .mapToObj(f -> String.format(Locale.ROOT, "%3d", f))
                    .findFirst()
                    .orElse("   "))
        .collect(Collectors.joining("", head, ""));
  }

  private static String name(String text) {
    return String.format(Locale.ROOT, "%-22s", text);
  }
}
