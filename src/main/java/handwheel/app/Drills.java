package handwheel.app;

import handwheel.casualty.Casualty;
import handwheel.debrief.Scripts;
import handwheel.diagnostics.Finding;
import handwheel.diagnostics.NearestWords;
import handwheel.proof.Reach;
import handwheel.reader.NamedShip;
import handwheel.reader.Read;
import handwheel.reader.ScriptReader;
import handwheel.reader.ShipFiles;
import handwheel.reader.ShipReader;
import handwheel.ship.Ship;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The folder of drills: scripts, and ships beside them. */
final class Drills implements Scripts {
  private static final String YAML = ".yaml";

  private final Path folder;

  Drills(Path folder) {
    this.folder = folder;
  }

  /** A script that was looked for, with everything that was found wrong. */
  record Loaded(Optional<Scripts.Found> found, List<Finding> findings) {}

  /** Finds the folder: {@code drills} here, or beside the program. */
  static Drills here() {
    Path local = Path.of("drills");
    return new Drills(Files.isDirectory(local) ? local : besideProgram().orElse(local));
  }

  private static Optional<Path> besideProgram() {
    try {
      Path program =
          Path.of(Drills.class.getProtectionDomain().getCodeSource().getLocation().toURI());
      return Stream.iterate(program.getParent(), p -> p != null, Path::getParent)
          .limit(3)
          .map(p -> p.resolve("drills"))
          .filter(Files::isDirectory)
          .findFirst();
    } catch (URISyntaxException e) {
      return Optional.empty();
    }
  }

  Path folder() {
    return folder;
  }

  /** Returns the names of the scripts. */
  List<String> scripts() {
    return names(folder, YAML);
  }

  /** Returns the names of the ships. */
  List<String> ships() {
    return names(folder.resolve("ships"), "");
  }

  /**
   * Returns another script of a family, if there is one. Looks at the line of the family alone: no
   * script need be whole for that.
   *
   * @param scriptId id of the script, which is not the answer
   * @param family whose scripts are looked for
   */
  Optional<String> sibling(String scriptId, String family) {
    return scripts().stream()
        .filter(name -> !name.equals(scriptId) && isOfFamily(name, family))
        .findFirst();
  }

  private boolean isOfFamily(String name, String family) {
    try (Stream<String> lines = Files.lines(folder.resolve(name + YAML))) {
      return lines.map(String::strip).anyMatch(l -> l.equals("family: " + family));
    } catch (IOException | UncheckedIOException e) {
      return false;
    }
  }

  private static List<String> names(Path in, String suffix) {
    try (Stream<Path> files = Files.list(in)) {
      return files
          .filter(f -> suffix.isEmpty() ? Files.isDirectory(f) : Files.isRegularFile(f))
          .map(f -> f.getFileName().toString())
          .filter(n -> n.endsWith(suffix))
          .map(n -> n.substring(0, n.length() - suffix.length()))
          .sorted()
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  /**
   * Finds the file of a script.
   *
   * @param script a path, or the name of one in the folder
   * @throws Usage if there is none
   */
  Path file(String script) throws Usage {
    Path path = Path.of(script);
    if (Files.isRegularFile(path)) {
      return path;
    }
    Path named = folder.resolve(script + YAML);
    if (Files.isRegularFile(named)) {
      return named;
    }
    String offer = NearestWords.offer(script, scripts());
    throw new Usage("there is no script `" + script + "`. " + offer);
  }

  /** Reads a script and its ship. */
  Loaded load(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    String name = file.toString();
    Read<NamedShip> named = ScriptReader.shipOf(name, bytes);
    if (named.value().isEmpty()) {
      return new Loaded(Optional.empty(), named.findings());
    }
    Read<Ship> ship = ship(file, named.value().get().id());
    List<Finding> findings = new ArrayList<>(ship.findings());
    if (ship.value().isEmpty()) {
      return new Loaded(Optional.empty(), findings);
    }
    Read<Casualty> script = ScriptReader.read(name, bytes, ship.value().get());
    findings.addAll(script.findings());
    script.value().ifPresent(c -> findings.addAll(Reach.of(c, ship.value().get())));
    return new Loaded(script.value().map(c -> new Found(ship.value().get(), c)), findings);
  }

  /** Reads a ship of this folder. */
  Read<Ship> ship(String id) {
    return ShipReader.read(files(folder.resolve("ships").resolve(id)));
  }

  private Read<Ship> ship(Path script, String shipId) {
    Path beside = script.toAbsolutePath().resolveSibling("ships").resolve(shipId);
    Path own = folder.resolve("ships").resolve(shipId);
    return ShipReader.read(files(Files.isDirectory(beside) ? beside : own));
  }

  private static ShipFiles files(Path shipFolder) {
    return new ShipFolder(shipFolder);
  }

  /** The files of a ship, known to a person by where they lie. */
  private record ShipFolder(Path folder) implements ShipFiles {
    @Override
    public Optional<byte[]> read(String name) {
      Path file = folder.resolve(name);
      try {
        return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public String shown(String name) {
      return folder.resolve(name).toString();
    }
  }

  @Override
  public Optional<Found> find(String shipId, String scriptId) {
    List<String> names = new ArrayList<>(scripts());
    names.sort(Comparator.comparing(n -> !n.equals(scriptId)));
    for (String name : names) {
      try {
        Optional<Found> found = load(folder.resolve(name + YAML)).found();
        if (found.isPresent() && found.get().casualty().id().equals(scriptId)) {
          return found.filter(f -> f.ship().id().equals(shipId));
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return Optional.empty();
  }
}
