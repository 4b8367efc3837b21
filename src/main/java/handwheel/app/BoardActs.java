package handwheel.app;

import handwheel.board.Candidate;
import handwheel.board.CandidatePage;
import handwheel.board.DrillFigures;
import handwheel.board.Marks;
import handwheel.board.RunFilter;
import handwheel.board.RunRow;
import handwheel.board.Section;
import handwheel.board.Viewer;
import handwheel.debrief.LedgerComparison;
import handwheel.debrief.Scripts;
import handwheel.debrief.Sentences;
import handwheel.debrief.Trouble;
import handwheel.logbook.Entry;
import handwheel.logbook.LedgerRun;
import handwheel.logbook.Minute;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.ScoreText;
import handwheel.scoring.StepResult;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The acts of a board that only look. */
final class BoardActs {
  private static final int USUAL_ROWS = 50;
  private static final int FEW = 10;

  private final BoardRoom room;
  private final Seat seat;
  private final Console console;

  BoardActs(BoardRoom room, Seat seat, Console console) {
    this.room = room;
    this.seat = seat;
    this.console = console;
  }

  boolean list(List<String> words) throws Usage, IOException {
    Words w = Words.of(words, List.of("by", "drill", "from", "to", "verdict", "most"));
    int most = w.number("most", USUAL_ROWS);
    String by = w.get("by").isEmpty() ? "" : room.names().pseudonym(w.get("by"));
    String verdict = w.get("verdict");
    int limit = verdict.isEmpty() ? most : Integer.MAX_VALUE;
    RunFilter wanted =
        new RunFilter(by, w.get("drill"), w.get("from"), w.get("to"), verdict, limit);
    Viewer viewer = room.viewer(seat.id());
    List<RunRow> rows = room.list(wanted);
    int count = room.count(wanted);
    if (!verdict.isEmpty()) {
      // A verdict that is kept back must not show by being asked for.
      rows = rows.stream().filter(viewer::maySee).toList();
      count = rows.size();
    }
    List<List<String>> table = new ArrayList<>();
    for (RunRow r : rows.subList(0, Math.min(most, rows.size()))) {
      table.add(row(r, viewer));
    }
    String note = count > most ? most + " of " + count + " shown." : count + " runs.";
    print(
        new Section(
            "Runs", List.of("run", "day", "candidate", "drill", "machine", "counts"), table, note));
    return true;
  }

  private List<String> row(RunRow r, Viewer viewer) throws IOException {
    return List.of(
        r.about().no() + "/" + r.root().substring(0, 6),
        r.about().started().substring(0, 10),
        room.plainName(r.about().trainee()),
        r.run().script(),
        viewer.result(r),
        r.mayCount() ? "may" : "no: " + r.whyNot());
  }

  boolean page(List<String> words) throws Usage, IOException {
    Candidate candidate = room.candidate(Words.only(words, "name"));
    console.result("DRILL  " + room.name(candidate.id()));
    CandidatePage.CAUTIONS.forEach(console::result);
    new CandidatePage(candidate, room.viewer(seat.id())).sections().forEach(this::print);
    return true;
  }

  boolean show(List<String> words) throws Usage, IOException {
    RunRow row = room.run(Words.only(words, "run"));
    if (!Marks.mayShow(room.minutes().minutes(), row, seat.id())) {
      throw new Usage(
          "mark it first: `mark "
              + words.get(0)
              + " pass` or `fail`. The machine's score would lead"
              + " you.");
    }
    Scripts.Found found = script(row);
    List<Entry> entries = played(row);
    if (row.run().isScored()) {
      seat.write("shown", row.root());
    }
    ScoreText.lines(found.casualty(), found.ship(), entries, room.sheet(row).orElseThrow())
        .forEach(console::result);
    return true;
  }

  private List<Entry> played(RunRow row) {
    return room.entries(row).stream().filter(e -> !(e instanceof Entry.Score)).toList();
  }

  private Scripts.Found script(RunRow row) throws Usage {
    return room.script(row)
        .orElseThrow(() -> new Usage("the script of this run is not here, or is another one."));
  }

  boolean replay(List<String> words) throws Usage, IOException {
    if (words.isEmpty()) {
      throw new Usage("a run is needed: `replay RUN`.");
    }
    Words w = Words.of(words.subList(1, words.size()), List.of("pace", "every"));
    RunRow row = room.run(words.get(0));
    Replay replay = new Replay(script(row), console);
    replay.play(row.run(), played(row), w.decimal("pace", 0), w.number("every", 10));
    return true;
  }

  boolean compare(List<String> words) throws Usage, IOException {
    if (words.size() != 2) {
      throw new Usage("two runs are needed: `compare RUN RUN`.");
    }
    RunRow a = room.run(words.get(0));
    RunRow b = room.run(words.get(1));
    Viewer viewer = room.viewer(seat.id());
    if (!viewer.maySee(a) || !viewer.maySee(b)) {
      throw new Usage("mark both first; what was earned would lead you.");
    }
    Optional<ScoreSheet> left = room.sheet(a);
    Optional<ScoreSheet> right = room.sheet(b);
    if (left.isEmpty() || right.isEmpty() || !a.version().equals(b.version())) {
      throw new Usage("only runs of one script, ship and engine, all here, can be compared.");
    }
    List<List<String>> table = new ArrayList<>();
    for (StepResult s : left.get().steps()) {
      right.get().steps().stream()
          .filter(o -> o.step().equals(s.step()))
          .forEach(o -> table.add(List.of(s.step(), act(s), act(o))));
    }
    print(new Section("Act by act", List.of("step", words.get(0), words.get(1)), table, ""));
    return true;
  }

  private static String act(StepResult s) {
    String at = s.instantTick() < 0 ? "not done" : Sentences.clock(s.instantTick());
    return at + ", " + (s.points() - s.lost()) + " of " + s.points();
  }

  boolean figures(List<String> words) throws Usage, IOException {
    String drill = Words.only(words, "drill");
    List<RunRow> rows = ofDrill(drill);
    Viewer viewer = room.viewer(seat.id());
    List<RunRow> seen = rows.stream().filter(viewer::maySee).toList();
    int hidden = rows.size() - seen.size();
    boolean areTaken = hidden >= FEW;
    console.result(
        "DRILL  "
            + drill
            + ": "
            + hidden
            + " scored runs wait for your mark; "
            + (areTaken ? "among so many none shows, all are taken." : "they are left out."));
    Scripts.Found found =
        room.script(rows.get(rows.size() - 1))
            .orElseThrow(() -> new Usage("script `" + drill + "` is not here, or is another one."));
    new DrillFigures(found.casualty(), viewer::maySee)
        .sections(areTaken ? rows : seen)
        .forEach(this::print);
    return true;
  }

  private List<RunRow> ofDrill(String drill) throws Usage, IOException {
    List<RunRow> rows = room.listWithLost(new RunFilter("", drill, "", "", "", Integer.MAX_VALUE));
    if (rows.isEmpty()) {
      throw new Usage("there is no run of `" + drill + "` here.");
    }
    return rows;
  }

  boolean agreement(List<String> words) throws Usage, IOException {
    List<RunRow> rows = ofDrill(Words.only(words, "drill"));
    List<Minute> minutes = room.minutes().minutes();
    List<List<String>> table = new ArrayList<>();
    List<String> assessors =
        minutes.stream().filter(m -> m.kind().equals("marked")).map(Minute::by).distinct().toList();
    for (int i = 0; i < assessors.size(); i++) {
      for (String other : assessors.subList(i + 1, assessors.size())) {
        String kappa = Marks.cohen(minutes, rows, assessors.get(i), other).text(2);
        table.add(List.of(room.name(assessors.get(i)) + " and " + room.name(other), kappa));
      }
    }
    for (int n = 3; n <= assessors.size(); n++) {
      table.add(List.of("runs that " + n + " marked", Marks.agreement(minutes, rows, n).text(2)));
    }
    print(new Section("Agreement beyond chance (kappa)", List.of("who", "kappa"), table, ""));
    return true;
  }

  boolean ledger(List<String> words) throws Usage, IOException {
    Words.none(words);
    boolean holds = true;
    for (Map.Entry<Path, LedgerComparison> e : room.ledgers().entrySet()) {
      List<List<String>> table = new ArrayList<>();
      for (LedgerRun run : e.getValue().book().runs()) {
        table.add(List.of(String.valueOf(run.no()), run.file(), e.getValue().standing(run)));
      }
      List<Trouble> troubles = e.getValue().itself(RecordFolder.fileNames(e.getKey()));
      print(
          new Section(
              "Ledger of " + e.getKey(),
              List.of("no", "record", "standing"),
              table,
              "last h " + e.getValue().book().lastH()));
      troubles.forEach(t -> console.result("! " + t.text()));
      holds &= troubles.isEmpty();
    }
    return holds;
  }

  private void print(Section section) {
    section.lines().forEach(console::result);
  }
}
