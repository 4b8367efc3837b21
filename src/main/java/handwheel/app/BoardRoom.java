package handwheel.app;

import handwheel.archive.Ledger;
import handwheel.archive.Minutes;
import handwheel.archive.NameTable;
import handwheel.archive.RecordFile;
import handwheel.archive.RecordName;
import handwheel.board.Candidate;
import handwheel.board.RunFilter;
import handwheel.board.RunIndex;
import handwheel.board.RunRow;
import handwheel.board.Viewer;
import handwheel.debrief.LedgerComparison;
import handwheel.debrief.Scripts;
import handwheel.logbook.Entry;
import handwheel.logbook.MinuteText;
import handwheel.logbook.RunRecord;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.Scorer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** A folder of records with its index, ledger, minutes and names. */
final class BoardRoom implements AutoCloseable {
  private static final int AT_ONCE = 500;

  private final Path folder;
  private final RunIndex index;
  private final NameTable names;
  private final KnownScripts scripts;

  private BoardRoom(Path folder, RunIndex index, KnownScripts scripts) {
    this.folder = folder;
    this.index = index;
    this.names = new NameTable(folder);
    this.scripts = scripts;
  }

  /** Opens the folder and brings its index up to date. */
  static BoardRoom open(Path folder, Scripts scripts) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new IOException("there is no folder `" + folder + "` of records");
    }
    String file = Files.isWritable(folder) ? folder.resolve(RunIndex.FILE).toString() : ":memory:";
    BoardRoom room = new BoardRoom(folder, RunIndex.open(file), new KnownScripts(scripts));
    room.refresh();
    return room;
  }

  /** Opens a folder that is only read; its index is forgotten. */
  static BoardRoom inMemory(Path folder, KnownScripts scripts) throws IOException {
    BoardRoom room = new BoardRoom(folder, RunIndex.open(":memory:"), scripts);
    room.refresh();
    return room;
  }

  /** Reads the records that are new or changed, forgets those that are gone. */
  int refresh() throws IOException {
    SortedMap<String, String> known = index.stamps();
    SortedMap<String, String> here = stamps();
    index.remove(known.keySet().stream().filter(p -> !here.containsKey(p)).toList());
    List<RunIndex.Stamped> fresh = new ArrayList<>();
    int read = 0;
    for (var e : here.entrySet()) {
      if (!e.getValue().equals(known.get(e.getKey()))) {
        row(e.getKey()).ifPresent(r -> fresh.add(new RunIndex.Stamped(e.getValue(), r)));
        read++;
      }
      if (fresh.size() >= AT_ONCE) {
        index.put(fresh);
        fresh.clear();
      }
    }
    index.put(fresh);
    return read;
  }

  /** Throws the index away and makes it anew. */
  int rebuild() throws IOException {
    index.remove(List.copyOf(index.stamps().keySet()));
    return refresh();
  }

  private Optional<RunRow> row(String path) {
    return RunRow.of(path, record(path));
  }

  private RunRecord record(String path) {
    return RecordFile.read(folder.resolve(path));
  }

  private SortedMap<String, String> stamps() throws IOException {
    SortedMap<String, String> stamps = new TreeMap<>();
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes is) {
            if (file.toString().endsWith(RecordName.SUFFIX)) {
              stamps.put(
                  folder.relativize(file).toString(),
                  is.size() + "@" + is.lastModifiedTime().toMillis());
            }
            return FileVisitResult.CONTINUE;
          }
        });
    return stamps;
  }

  Path folder() {
    return folder;
  }

  NameTable names() {
    return names;
  }

  KnownScripts scripts() {
    return scripts;
  }

  List<RunRow> list(RunFilter filter) throws IOException {
    return index.list(filter);
  }

  List<RunRow> listWithLost(RunFilter filter) throws IOException {
    return index.listWithLost(filter);
  }

  int count(RunFilter filter) throws IOException {
    return index.count(filter);
  }

  MinuteText.Book minutes() throws IOException {
    return new Minutes(folder).read();
  }

  /** Returns the ledgers of this folder and those imported into it. */
  SortedMap<Path, LedgerComparison> ledgers() throws IOException {
    SortedMap<Path, LedgerComparison> all = new TreeMap<>();
    List<Path> folders = new ArrayList<>(List.of(folder));
    try (var below = Files.list(folder)) {
      below.filter(Files::isDirectory).forEach(folders::add);
    }
    for (Path f : folders) {
      if (Files.exists(f.resolve(Ledger.FILE))) {
        all.put(f, new LedgerComparison(new Ledger(f).read()));
      }
    }
    return all;
  }

  Viewer viewer(String who) throws IOException {
    return new Viewer(who, minutes().minutes(), this::name, this::sheet);
  }

  /** Returns the name behind a pseudonym, with the pseudonym. */
  String name(String pseudonym) {
    try {
      return names.name(pseudonym).map(n -> n + " (" + pseudonym + ")").orElse(pseudonym);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns the name behind a pseudonym alone; the pseudonym where the name was erased. */
  String plainName(String pseudonym) throws IOException {
    return names.name(pseudonym).orElse(pseudonym);
  }

  Candidate candidate(String name) throws IOException, Usage {
    String id = names.pseudonym(name);
    List<RunRow> runs = list(RunFilter.ofTrainee(id));
    if (runs.isEmpty()) {
      throw new Usage("there is no run of `" + name + "` here; `list` shows who there is.");
    }
    return new Candidate(id, runs, minutes().minutes());
  }

  /**
   * Finds a run by its number, or by the first digits of its root.
   *
   * @throws Usage if there is none, or several
   */
  RunRow run(String word) throws IOException, Usage {
    int slash = word.indexOf('/');
    String number = slash < 0 ? word : word.substring(0, slash);
    String root = slash < 0 ? "" : word.substring(slash + 1);
    if (!number.matches("\\d{1,9}")) {
      throw new Usage("`" + word + "`: a run is its number, or number, slash and root.");
    }
    List<RunRow> found =
        index.numbered(Integer.parseInt(number)).stream()
            .filter(r -> r.root().startsWith(root))
            .toList();
    if (found.size() != 1) {
      throw new Usage(
          found.isEmpty()
              ? "there is no run `" + word + "`; `list` shows them."
              : "there are " + found.size() + " runs `" + word + "`; add a slash and its root.");
    }
    return found.get(0);
  }

  List<Entry> entries(RunRow row) {
    return record(row.path()).entries();
  }

  /** Returns the script of a run, if it is here and the same. */
  Optional<Scripts.Found> script(RunRow row) {
    return scripts.find(row.run()).filter(f -> f.casualty().sha256().equals(row.run().scriptSha()));
  }

  Optional<ScoreSheet> sheet(RunRow row) {
    List<Entry> entries = entries(row).stream().filter(e -> !(e instanceof Entry.Score)).toList();
    return script(row).map(f -> Scorer.score(f.casualty(), f.ship(), entries));
  }

  @Override
  public void close() throws IOException {
    index.close();
  }
}
