package handwheel.app;

import handwheel.archive.Ledger;
import handwheel.archive.RecordName;
import handwheel.debrief.LedgerComparison;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Record files, and the ledgers beside them. */
final class RecordFolder {
  private RecordFolder() {}

  /**
   * Finds records.
   *
   * @param names files, or folders with records in them or below
   * @return the files, each once, those of a folder in the order of their names
   * @throws Usage if there is no such file or folder
   */
  static List<Path> records(List<String> names) throws Usage, IOException {
    List<Path> all = new ArrayList<>();
    for (String name : names) {
      Path path = Path.of(name);
      if (Files.isDirectory(path)) {
        all.addAll(below(path));
      } else if (Files.isRegularFile(path)) {
        all.add(path);
      } else {
        throw new Usage("there is no record `" + name + "`.");
      }
    }
    return all.stream().distinct().toList();
  }

  private static List<Path> below(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(f -> f.toString().endsWith(RecordName.SUFFIX)).sorted().toList();
    }
  }

  /** Returns the folders of these records, and those given, that have a ledger. */
  static SortedMap<Path, LedgerComparison> ledgers(List<String> names, List<Path> records)
      throws IOException {
    TreeSet<Path> folders = new TreeSet<>();
    records.forEach(r -> folders.add(folderOf(r)));
    names.stream().map(Path::of).filter(Files::isDirectory).forEach(folders::add);
    SortedMap<Path, LedgerComparison> ledgers = new TreeMap<>();
    for (Path folder : folders) {
      if (Files.exists(folder.resolve(Ledger.FILE))) {
        ledgers.put(folder, new LedgerComparison(new Ledger(folder).read()));
      }
    }
    return ledgers;
  }

  /** Returns the folder a record stands in. */
  static Path folderOf(Path record) {
    return Optional.ofNullable(record.getParent()).orElse(Path.of(""));
  }

  /** Returns the names of the records right in a folder. */
  static SortedSet<String> fileNames(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder.toString().isEmpty() ? Path.of(".") : folder)) {
      TreeSet<String> names = new TreeSet<>();
      files.map(f -> String.valueOf(f.getFileName())).forEach(names::add);
      return names;
    }
  }
}
