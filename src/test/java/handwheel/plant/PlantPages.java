package handwheel.plant;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The tables of the plant's pages: what they name, and what they say about it. */
final class PlantPages {
  /** What a table lists; its word is the head of the first column. */
  enum Kind {
    STATE,
    INPUT,
    OUTPUT,
    SIZE;

    private static @Nullable Kind of(String head) {
      return Stream.of(values()).filter(k -> head.equals(k.word())).findFirst().orElse(null);
    }

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private static final Pattern NAME = Pattern.compile("`([^`]+)`");

  private final Map<Kind, SortedMap<String, List<String>>> rows = new EnumMap<>(Kind.class);

  private PlantPages(Stream<String> lines) {
    for (Kind each : Kind.values()) {
      rows.put(each, new TreeMap<>());
    }
    Kind kind = null;
    boolean isInTable = false;
    for (String line : (Iterable<String>) lines::iterator) {
      List<String> cells = cells(line);
      if (!cells.isEmpty() && !isInTable) {
        kind = Kind.of(cells.get(0));
      } else if (!cells.isEmpty() && kind != null) {
        add(kind, cells);
      }
      isInTable = !cells.isEmpty();
    }
  }

  static PlantPages ofFolder() {
    try (Stream<Path> files = Files.list(Path.of("docs", "plant"))) {
      List<String> lines = new ArrayList<>();
      for (Path file : files.sorted().toList()) {
        lines.addAll(Files.readAllLines(file, StandardCharsets.UTF_8));
        lines.add("");
      }
      return of(lines);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static PlantPages of(List<String> lines) {
    return new PlantPages(lines.stream());
  }

  private static List<String> cells(String line) {
    return line.startsWith("|")
        ? Stream.of(line.substring(1).split("\\|")).map(String::strip).toList()
        : List.of();
  }

  private void add(Kind kind, List<String> cells) {
    Matcher name = NAME.matcher(cells.get(0));
    while (name.find()) {
      of(kind).put(name.group(1), cells.subList(1, cells.size()));
    }
  }

  private SortedMap<String, List<String>> of(Kind kind) {
    return requireNonNull(rows.get(kind));
  }

  /** Tells what is missing, unknown or said wrongly; {@code truth} has the first cells by name. */
  List<String> breaches(Kind kind, SortedMap<String, List<String>> truth) {
    SortedMap<String, List<String>> said = of(kind);
    List<String> breaches = new ArrayList<>();
    for (String name : said.keySet()) {
      if (!truth.containsKey(name)) {
        breaches.add(name + ": no such " + kind.word() + "; take it out of docs/plant");
      }
    }
    truth.forEach(
        (name, cells) -> {
          List<String> found = said.get(name);
          if (found == null) {
            breaches.add(name + ": add a row to a table of kind " + kind.word() + " in docs/plant");
          } else if (!found.subList(0, Math.min(cells.size(), found.size())).equals(cells)) {
            breaches.add(name + ": the page says " + found + ", the code " + cells);
          }
        });
    return breaches;
  }
}
