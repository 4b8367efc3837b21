package handwheel.app;

import handwheel.archive.Ledger;
import handwheel.board.Candidate;
import handwheel.board.Marks;
import handwheel.board.Ruling;
import handwheel.board.RunRow;
import handwheel.logbook.LedgerLine;
import handwheel.logbook.Minute;
import handwheel.logbook.PublicKeys;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** The acts of a board that leave a line, signed by whoever does them. */
final class BoardMinutes {
  private static final List<String> NOTES = List.of("void", "abandoned", "missing");

  private final BoardRoom room;
  private final Seat seat;
  private final Asking asking;
  private final Console console;

  /** Asks whoever sits at the board; an empty answer at the end of the lines. */
  @FunctionalInterface
  interface Asking {
    String ask(String question) throws IOException;
  }

  BoardMinutes(BoardRoom room, Seat seat, Asking asking, Console console) {
    this.room = room;
    this.seat = seat;
    this.asking = asking;
    this.console = console;
  }

  boolean mark(List<String> words) throws Usage, IOException {
    if (words.size() < 2 || !List.of("pass", "fail").contains(words.get(1))) {
      throw new Usage("`mark RUN pass` or `mark RUN fail`, then a note, is needed.");
    }
    RunRow row = room.run(words.get(0));
    List<Minute> minutes = room.minutes().minutes();
    String me = seat.id();
    boolean wasShown =
        minutes.stream()
            .anyMatch(
                m -> m.kind().equals("shown") && m.of().equals(row.root()) && m.by().equals(me));
    if (wasShown) {
      throw new Usage("the machine's score of this run was shown to you; a mark now would be its.");
    }
    seat.write("marked", row.root(), "verdict", words.get(1), "note", Words.rest(words, 2));
    int others = Marks.of(minutes, row.root()).size();
    console.result(
        "Marked. `show " + words.get(0) + "` shows the machine's score. Others: " + others);
    return true;
  }

  boolean statement(List<String> words) throws Usage, IOException {
    if (words.size() < 2) {
      throw new Usage("`statement NAME TEXT` is needed.");
    }
    Candidate candidate = room.candidate(words.get(0));
    seat.write("stated", candidate.id(), "text", Words.rest(words, 1));
    return true;
  }

  boolean oral(List<String> words) throws Usage, IOException {
    if (words.size() < 3) {
      throw new Usage("`oral NAME MARK QUESTION` is needed.");
    }
    Candidate candidate = room.candidate(words.get(0));
    seat.write("asked", candidate.id(), "mark", words.get(1), "question", Words.rest(words, 2));
    return true;
  }

  boolean qualifier(List<String> words) throws Usage, IOException {
    if (words.size() != 4 || !PublicKeys.isKey(words.get(1)) || !isDay(words.get(3))) {
      throw new Usage(
          "`qualifier NAME KEY SCOPE UNTIL` is needed: the key as `keys export` prints it, a drill or"
              + " `any`, and the last day such as 2032-02-03.");
    }
    String of = room.names().pseudonym(words.get(0));
    if (of.equals(seat.id())) {
      throw new Usage("nobody names himself; let whoever keeps the standard name you.");
    }
    seat.write("named", of, "key", words.get(1), "scope", words.get(2), "until", words.get(3));
    console.result(
        "Named " + room.name(of) + " for " + words.get(2) + " until " + words.get(3) + ".");
    return true;
  }

  private static boolean isDay(String text) {
    return text.matches("\\d{4}-\\d{2}-\\d{2}");
  }

  boolean decide(List<String> words) throws Usage, IOException {
    Candidate candidate = room.candidate(Words.only(words, "name"));
    console.result("On " + room.name(candidate.id()) + ". Each answer on its line.");
    String drill = asking.ask("Drill (" + String.join(", ", candidate.drills()) + ")?");
    String verdict = asking.ask("Decision (" + String.join(", ", Ruling.VERDICTS) + ")?");
    String reason = asking.ask("Reason, in words?");
    String conditions = asking.ask("Conditions (empty: none)?");
    String until = asking.ask("Last day it holds, such as 2032-02-03 (empty: none)?");
    String key = seat.signer().publicHex();
    Ruling ruling = new Ruling(drill, verdict, until, reason, seat.id(), key);
    List<String> objections = ruling.objections(candidate, Seat.today());
    if (!objections.isEmpty()) {
      objections.forEach(o -> console.result("Not signed: " + o));
      return false;
    }
    seat.write(
        "decided", candidate.id(),
        "drill", drill,
        "verdict", verdict,
        "reason", reason,
        "conditions", conditions,
        "until", until,
        "runs", runs(candidate, drill),
        "ledger", new Ledger(room.folder()).read().lastH());
    console.result(
        "Signed: " + verdict + " for " + drill + ". It stands beside the machine's score.");
    return true;
  }

  private static String runs(Candidate candidate, String drill) {
    return candidate.runs().stream()
        .filter(r -> r.run().script().equals(drill))
        .map(RunRow::root)
        .collect(Collectors.joining(" "));
  }

  boolean note(List<String> words) throws Usage, IOException {
    if (words.size() < 3 || !NOTES.contains(words.get(1)) || !words.get(0).matches("\\d{1,9}")) {
      throw new Usage("`note RUN void|abandoned|missing REASON` is needed, the run by its number.");
    }
    if (seat.id().isEmpty()) {
      throw new Usage("say who you are: `board --me NAME`.");
    }
    Path folder = room.folder();
    LedgerLine.Noted noted =
        new LedgerLine.Noted(
            Integer.parseInt(words.get(0)), words.get(1), Words.rest(words, 2), seat.id());
    java.util.Optional<String> trouble = new Ledger(folder).note(noted);
    console.trouble(trouble);
    return trouble.isEmpty();
  }

  boolean erase(List<String> words) throws Usage, IOException {
    boolean isErased = room.names().erase(Words.only(words, "pseudonym"));
    console.result(isErased ? "Erased; every proof stands." : "There is no such name.");
    return isErased;
  }
}
