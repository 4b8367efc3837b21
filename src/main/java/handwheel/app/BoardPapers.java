package handwheel.app;

import handwheel.archive.Ledger;
import handwheel.archive.Minutes;
import handwheel.board.BoardPack;
import handwheel.board.Candidate;
import handwheel.board.CandidatePage;
import handwheel.board.Papers;
import handwheel.board.RunFilter;
import handwheel.board.RunRow;
import handwheel.board.Viewer;
import handwheel.logbook.Chain;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Papers of a board: packs, tables, and folders that travel between machines. */
final class BoardPapers {
  private final BoardRoom room;
  private final Seat seat;
  private final Console console;

  BoardPapers(BoardRoom room, Seat seat, Console console) {
    this.room = room;
    this.seat = seat;
    this.console = console;
  }

  boolean pack(List<String> words) throws Usage, IOException {
    if (words.size() != 2) {
      throw new Usage("`pack NAME FILE.html` is needed.");
    }
    Candidate candidate = room.candidate(words.get(0));
    Viewer viewer = room.viewer(seat.id());
    String html =
        BoardPack.html(
            "papers of " + room.name(candidate.id()),
            CandidatePage.CAUTIONS,
            new CandidatePage(candidate, viewer).sections());
    Files.writeString(Path.of(words.get(1)), html);
    console.result("Written: " + words.get(1));
    return true;
  }

  boolean csv(List<String> words) throws Usage, IOException {
    if (words.size() != 2 || !List.of("runs", "items").contains(words.get(0))) {
      throw new Usage("`csv runs FILE` or `csv items FILE` is needed.");
    }
    List<RunRow> rows = room.listWithLost(RunFilter.ALL);
    Viewer viewer = room.viewer(seat.id());
    String text =
        words.get(0).equals("runs") ? Papers.runs(rows, viewer) : Papers.items(rows, viewer);
    Files.writeString(Path.of(words.get(1)), text);
    console.result("Written: " + words.get(1));
    return true;
  }

  boolean index(List<String> words) throws Usage, IOException {
    Words.none(words);
    console.result(room.rebuild() + " records read, index made anew.");
    return true;
  }

  /** Copies records and ledgers; names stay behind. */
  boolean export(List<String> words) throws Usage, IOException {
    Path to = Path.of(Words.only(words, "folder"));
    Files.createDirectories(to);
    int copied = 0;
    for (RunRow row : room.list(RunFilter.ALL)) {
      copied += copy(room.folder().resolve(row.path()), to.resolve(row.path())) ? 1 : 0;
    }
    for (Path folder : room.ledgers().keySet()) {
      Path within = room.folder().relativize(folder);
      copy(folder.resolve(Ledger.FILE), to.resolve(within).resolve(Ledger.FILE));
    }
    if (Files.exists(room.folder().resolve(Minutes.FILE))) {
      copy(room.folder().resolve(Minutes.FILE), to.resolve(Minutes.FILE));
    }
    console.result(
        copied + " records written to `" + to + "`, with ledger and minutes, without names.");
    return true;
  }

  /** Another machine's folder becomes a folder of its own, so that each ledger stays whole. */
  boolean importFolder(List<String> words) throws Usage, IOException {
    Path from = Path.of(Words.only(words, "folder"));
    if (!Files.isDirectory(from)) {
      throw new Usage("there is no folder `" + from + "`.");
    }
    TreeSet<String> roots = new TreeSet<>();
    room.list(RunFilter.ALL).forEach(r -> roots.add(r.root()));
    roots.remove(Chain.START);
    try (BoardRoom other = BoardRoom.inMemory(from, room.scripts())) {
      List<RunRow> fresh = new ArrayList<>();
      List<RunRow> all = other.list(RunFilter.ALL);
      all.stream().filter(r -> !roots.contains(r.root())).forEach(fresh::add);
      if (!fresh.isEmpty()) {
        bring(from, fresh);
      }
      console.result(
          fresh.size()
              + " records taken in, "
              + (all.size() - fresh.size())
              + " were here already.");
    }
    room.refresh();
    return true;
  }

  private void bring(Path from, List<RunRow> fresh) throws IOException {
    Path into = room.folder().resolve("from-" + name(from));
    Files.createDirectories(into);
    for (RunRow row : fresh) {
      copy(from.resolve(row.path()), into.resolve(row.path()));
    }
    try (Stream<Path> below = Files.walk(from)) {
      for (Path ledger : below.filter(f -> f.endsWith(Ledger.FILE)).toList()) {
        copyNewer(ledger, into.resolve(from.relativize(ledger)));
      }
    }
  }

  /** Names an installation by the first line of its ledger, which never changes. */
  private static String name(Path from) throws IOException {
    Path ledger = from.resolve(Ledger.FILE);
    if (!Files.exists(ledger)) {
      return "unnumbered";
    }
    try (Stream<String> lines = Files.lines(ledger)) {
      String first = lines.findFirst().orElse("");
      return first.length() < 70
          ? "unnumbered"
          : first.substring(first.length() - 66).substring(0, 8);
    }
  }

  private static boolean copy(Path from, Path to) throws IOException {
    if (Files.exists(to)) {
      return false;
    }
    Path folder = to.toAbsolutePath().getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    Files.copy(from, to);
    return true;
  }

  /** A ledger only grows: the longer one is the newer one, if it begins with the other. */
  private void copyNewer(Path from, Path to) throws IOException {
    if (copy(from, to)) {
      return;
    }
    String here = Files.readString(to);
    String there = Files.readString(from);
    if (there.startsWith(here)) {
      Files.writeString(to, there);
    } else if (!here.startsWith(there)) {
      console.message("Caution: `" + from + "` and `" + to + "` are not one ledger; ours is kept.");
    }
  }
}
