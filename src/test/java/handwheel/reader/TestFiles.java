package handwheel.reader;

import handwheel.plant.StateNames;
import handwheel.ship.Ship;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The files the reader's tests read. */
final class TestFiles {
  static final Path DRILLS = Path.of("drills");
  static final Path ALDER_REACH = DRILLS.resolve("ships/alder-reach");
  static final Path RESOURCES = Path.of("src/test/resources");
  static final Path GOOD = RESOURCES.resolve("scripts/good");
  static final Path BAD = RESOURCES.resolve("scripts/bad");
  static final Path SMALL_SHIP = RESOURCES.resolve("ships/small");
  static final Path BAD_SHIPS = RESOURCES.resolve("ships/bad");

  private TestFiles() {}

  static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  static String text(Path file) {
    return new String(bytes(file), StandardCharsets.UTF_8);
  }

  static ShipFiles folder(Path folder) {
    return name ->
        Files.exists(folder.resolve(name))
            ? Optional.of(bytes(folder.resolve(name)))
            : Optional.empty();
  }

  /** Returns the names of the plant's states from the list the plant itself is tested with. */
  static StateNames states() {
    List<String> continuous =
        text(RESOURCES.resolve("handwheel/plant/names.csv"))
            .lines()
            .filter(line -> line.startsWith("state,"))
            .map(line -> line.split(",", -1)[2])
            .toList();
    List<String> all = new ArrayList<>(continuous);
    Stream.of("s1", "s2", "s3", "s4", "s5", "h1", "h2", "h3")
        .map(burner -> "burner." + burner + ".lit")
        .forEach(all::add);
    all.addAll(List.of("furnace.saturated.purge", "furnace.superheater.purge", "stack.draft"));
    return new StateNames(continuous, all);
  }

  static Ship alderReach() {
    return ship(ALDER_REACH);
  }

  static Ship smallShip() {
    return ship(SMALL_SHIP);
  }

  private static Ship ship(Path folder) {
    return ShipReader.read(folder(folder), states()).value().orElseThrow();
  }

  /** Returns the files of a folder that end so, sorted by name. */
  static List<Path> files(Path folder, String end) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(end)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
