package handwheel.drill;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * A reference run of the independent study: where it starts, what was done, what came of it.
 *
 * @param name the run's name
 * @param start name of the start condition
 * @param durationS length, s
 * @param spacingS time between rows, s
 */
record Trajectory(String name, String start, int durationS, int spacingS) {
  private static final SortedMap<String, String> FILES = files();

  static List<Trajectory> all() {
    List<Trajectory> all = new ArrayList<>();
    for (String[] row : rows("index.csv")) {
      all.add(new Trajectory(row[0], row[1], Integer.parseInt(row[2]), Integer.parseInt(row[3])));
    }
    return all;
  }

  static Trajectory named(String name) {
    return all().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
  }

  /** What was done: time, input, value, duration, note. */
  List<String[]> inputs() {
    return rows(name + ".inputs.csv");
  }

  /** What happened: time, words. */
  List<String[]> events() {
    List<String[]> events = new ArrayList<>();
    for (String line : lines(name + ".events.csv")) {
      int comma = line.indexOf(',');
      events.add(new String[] {line.substring(0, comma), unquoted(line.substring(comma + 1))});
    }
    return events;
  }

  List<String> columns() {
    return List.of(text(name + ".csv").lines().findFirst().orElseThrow().split(",", -1));
  }

  List<String[]> rows() {
    return rows(name + ".csv");
  }

  private static List<String[]> rows(String file) {
    return lines(file).stream().map(Trajectory::cells).toList();
  }

  private static List<String> lines(String file) {
    return text(file).lines().skip(1).toList();
  }

  private static String[] cells(String line) {
    String[] cells = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
    for (int i = 0; i < cells.length; i++) {
      cells[i] = unquoted(cells[i]);
    }
    return cells;
  }

  private static String unquoted(String cell) {
    return cell.startsWith("\"") ? cell.substring(1, cell.length() - 1) : cell;
  }

  private static String text(String file) {
    String text = FILES.get(file);
    if (text == null) {
      throw new IllegalArgumentException(file);
    }
    return text;
  }

  private static SortedMap<String, String> files() {
    SortedMap<String, String> files = new TreeMap<>();
    try (InputStream in = Trajectory.class.getResourceAsStream("/trajectories/runs.zip");
        ZipInputStream zip = new ZipInputStream(in)) {
      for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
        files.put(e.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }
}
