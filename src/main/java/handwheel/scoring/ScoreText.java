package handwheel.scoring;

import handwheel.casualty.Casualty;
import handwheel.logbook.Entry;
import handwheel.ship.OrderText;
import handwheel.ship.Ship;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A score sheet for people, at most 80 columns wide, without colour: critical acts first, then
 * people and what followed, then every lost point, points last.
 */
public final class ScoreText {
  private final Casualty casualty;
  private final RunLog log;
  private final ScoreSheet sheet;
  private final Columns out = new Columns();

  private ScoreText(Casualty casualty, RunLog log, ScoreSheet sheet) {
    this.casualty = casualty;
    this.log = log;
    this.sheet = sheet;
  }

  /**
   * Prints a sheet.
   *
   * @param casualty the script it was run from
   * @param ship the ship it was run in
   * @param entries every entry of the run, in its order
   * @param sheet its score
   * @return lines of at most 80 characters
   */
  public static List<String> lines(
      Casualty casualty, Ship ship, List<Entry> entries, ScoreSheet sheet) {
    RunLog log = new RunLog(entries, new OrderText(ship, casualty.messages()));
    return new ScoreText(casualty, log, sheet).print();
  }

  private List<String> print() {
    head();
    critical();
    people();
    lost();
    notes("Crew and gear (nobody's points)", Note.Kind.CREW_OR_GEAR);
    notes("Remarks", Note.Kind.REMARK);
    points();
    return out.lines();
  }

  private void head() {
    out.add("", 0, "DRILL - score sheet - " + casualty.id() + ": " + casualty.title());
    log.all(Entry.Run.class).limit(1).forEach(this::run);
    out.add("", 0, "Times are minutes:seconds from the first cue; a tick is 0.05 s.");
  }

  private void run(Entry.Run run) {
    String text = "Ship " + run.ship() + ", seed " + run.seed() + ", mode " + run.mode();
    out.add("", 0, text + ", engine " + run.engine() + ".");
  }

  private void critical() {
    title("Critical acts");
    sheet.critical().forEach(this::critical);
    if (sheet.critical().isEmpty()) {
      out.add("  ", 2, "This script has none.");
    }
  }

  private void critical(CriticalAct act) {
    String standing = act.isFailure() ? "NOT MET" : act.standing().words();
    String when = act.tick() == StepResult.NEVER ? "" : " at " + when(act.tick());
    out.add(pad("  " + standing, 12), 12, act.id() + when + ": " + act.why());
  }

  private void people() {
    title("People and what followed (told here, not charged again)");
    out.add("  ", 2, count(Note.Kind.HURT) + " hurt, " + count(Note.Kind.DOWN) + " down.");
    Stream.of(Note.Kind.HURT, Note.Kind.DOWN, Note.Kind.PLANT)
        .flatMap(this::notes)
        .sorted(Comparator.comparingLong(Note::tick))
        .forEach(this::note);
  }

  private long count(Note.Kind kind) {
    return notes(kind).count();
  }

  private Stream<Note> notes(Note.Kind kind) {
    return sheet.notes().stream().filter(n -> n.kind() == kind);
  }

  private void notes(String title, Note.Kind kind) {
    if (count(kind) > 0) {
      title(title);
      notes(kind).forEach(this::note);
    }
  }

  private void note(Note note) {
    boolean isAfter = note.kind() != Note.Kind.REMARK && !note.step().isEmpty();
    String step = isAfter ? " (after " + note.step() + ")" : "";
    out.add("  ", 4, when(note.tick()) + " " + note.text() + step);
  }

  private void lost() {
    title("Lost points");
    sheet.charges().stream().sorted(Comparator.comparingLong(Charge::tick)).forEach(this::lost);
    if (sheet.charges().isEmpty()) {
      out.add("  ", 2, "None.");
    }
  }

  private void lost(Charge c) {
    String critical = c.isCritical() ? ", critical" : "";
    String points = c.points() == 0 ? "0" : "-" + c.points();
    String what = c.step() + ": " + c.type().word() + critical + ", at " + when(c.tick());
    out.add(pad("  " + points, 7), 7, what);
    out.add("       ", 7, c.why());
    out.add("       ", 7, "Reading: " + c.reading() + ".");
    out.add("       ", 7, "Basis: " + c.basis().word() + ". Script: " + c.spot() + ".");
  }

  private void points() {
    title("Points");
    long failed = sheet.critical().stream().filter(CriticalAct::isFailure).count();
    String why =
        failed == 0
            ? ""
            : " " + failed + (failed == 1 ? " critical act" : " critical acts") + " not met.";
    String verdict = sheet.isPass() ? "PASS." : "FAIL.";
    String mark = " of 100, " + casualty.passPoints() + " to pass: ";
    out.add("  ", 2, sheet.points() + mark + verdict + why);
    out.blank();
    out.add("", 0, "The machine advises; the board decides.");
  }

  private String when(long tick) {
    return Clock.minutes(tick, log.zeroTick()) + " (tick " + tick + ")";
  }

  private void title(String text) {
    out.blank();
    out.add("", 0, text);
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }
}
