package handwheel.board;

import handwheel.debrief.DueAgain;
import handwheel.logbook.Minute;
import handwheel.scoring.CriticalAct;
import handwheel.scoring.ScoreSheet;
import handwheel.ship.SteamingWatch;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A candidate's page: decisions, critical acts, runs, trends, statements, oral questions. */
public final class CandidatePage {
  /** What stands at the head of every paper. */
  public static final List<String> CAUTIONS =
      List.of(
          "A trainer teaches; the ship's own procedures, local codes and licensed practice decide.",
          "A run is evidence of one drill in a model, beside the walked drill, the oral answers and"
              + " the supervisor's statement. The machine advises; the board decides.");

  private static final int DAY_CHARS = 10;

  private final Candidate candidate;
  private final Viewer viewer;

  /**
   * Makes a page.
   *
   * @param candidate whose
   * @param viewer for whom
   */
  public CandidatePage(Candidate candidate, Viewer viewer) {
    this.candidate = candidate;
    this.viewer = viewer;
  }

  /**
   * Returns the page's tables, what weighs most first.
   *
   * @return sections
   */
  public List<Section> sections() {
    return List.of(
        decisions(), dueAgain(), critical(), runs(), marks(), trends(), statements(), oral());
  }

  private Section decisions() {
    List<List<String>> rows = new ArrayList<>();
    for (Minute m : candidate.minutes("decided")) {
      rows.add(
          List.of(
              day(m.at()),
              m.fact("drill"),
              m.fact("verdict"),
              m.fact("until"),
              m.fact("conditions"),
              m.fact("reason"),
              viewer.name().apply(m.by()),
              m.key().substring(0, 8)));
    }
    return new Section(
        "Decisions of the board",
        List.of("day", "drill", "decision", "until", "conditions", "reason", "by", "key"),
        rows,
        "Signed, in the order in which they were taken; the last of a drill holds.");
  }

  private Section dueAgain() {
    List<List<String>> rows = new ArrayList<>();
    for (String drill : candidate.drills()) {
      Optional<Minute> decision =
          candidate.decision(drill).filter(m -> m.fact("verdict").equals("qualified"));
      List<RunRow> own = candidate.runs().stream().filter(r -> isOf(r, drill)).toList();
      String last = day(own.get(own.size() - 1).about().started());
      String due = decision.map(m -> m.fact("until")).orElseGet(() -> dueAfter(last));
      String why = decision.isPresent() ? "decision" : DueAgain.AFTER_A_CLEAN_RUN;
      rows.add(List.of(drill, last, due, why));
    }
    return new Section("Due again", List.of("drill", "last run", "due", "by"), rows, "");
  }

  /** The charges of a run whose score is kept back must not show in a date. */
  private static String dueAfter(String day) {
    int days = DueAgain.after(List.of(), SteamingWatch.USUAL_CURRENCY_DAYS).days();
    return LocalDate.parse(day).plusDays(days).toString();
  }

  private static boolean isOf(RunRow row, String drill) {
    return row.run().script().equals(drill);
  }

  private Section critical() {
    List<List<String>> rows = new ArrayList<>();
    for (RunRow run : candidate.runs()) {
      if (run.mayCount() && viewer.maySee(run)) {
        Optional<ScoreSheet> sheet = viewer.sheet().apply(run);
        sheet.ifPresent(s -> s.critical().forEach(c -> rows.add(critical(run, c))));
      }
    }
    return new Section(
        "Critical acts",
        List.of("run", "drill", "act", "standing"),
        rows,
        "Of runs that may count and that you have marked.");
  }

  private static List<String> critical(RunRow run, CriticalAct act) {
    return List.of(number(run), run.run().script(), act.id(), act.standing().words());
  }

  private Section runs() {
    List<List<String>> rows = new ArrayList<>();
    for (RunRow r : candidate.runs()) {
      rows.add(
          List.of(
              number(r),
              day(r.about().started()),
              r.run().script(),
              r.run().mode(),
              String.valueOf(candidate.attempt(r)),
              candidate.exposure(r),
              viewer.result(r),
              r.mayCount() ? "may count" : "does not count: " + r.whyNot(),
              signature(r),
              r.coached().isEmpty() ? "none noted" : r.coached()));
    }
    return new Section(
        "Runs",
        List.of(
            "run",
            "day",
            "drill",
            "mode",
            "attempt",
            "met before",
            "machine",
            "counts",
            "signed",
            "help"),
        rows,
        "");
  }

  private String signature(RunRow r) {
    return r.isSigned()
        ? "key " + r.about().key().substring(0, 8) + ", attested by " + attests(r)
        : "unsigned";
  }

  private String attests(RunRow r) {
    return r.about().attests().isEmpty() ? "nobody" : viewer.name().apply(r.about().attests());
  }

  private Section marks() {
    List<List<String>> rows = new ArrayList<>();
    for (RunRow r : candidate.runs()) {
      for (Minute m : candidate.marks(r)) {
        rows.add(
            List.of(
                number(r),
                viewer.name().apply(m.by()),
                m.fact("verdict"),
                viewer.result(r),
                m.fact("note")));
      }
    }
    return new Section(
        "Assessors' marks, entered before the score was shown",
        List.of("run", "assessor", "mark", "machine", "note"),
        rows,
        "");
  }

  private Section trends() {
    List<List<String>> rows = new ArrayList<>();
    for (String drill : candidate.drills()) {
      List<String> points = new ArrayList<>();
      for (RunRow r : candidate.runs()) {
        if (isOf(r, drill) && r.standing().equals("finished")) {
          points.add(viewer.maySee(r) ? String.valueOf(r.score().points()) : "?");
        }
      }
      rows.add(List.of(drill, String.join(" ", points)));
    }
    return new Section(
        "Points in the order of attempts",
        List.of("drill", "points"),
        rows,
        "First and repeat attempts are different things: do not average them.");
  }

  private Section statements() {
    return said("Supervisor's statements", "stated", "text");
  }

  private Section oral() {
    return said("Oral questions", "asked", "question");
  }

  private Section said(String title, String kind, String fact) {
    List<List<String>> rows = new ArrayList<>();
    for (Minute m : candidate.minutes(kind)) {
      rows.add(List.of(day(m.at()), viewer.name().apply(m.by()), m.fact("mark"), m.fact(fact)));
    }
    return new Section(title, List.of("day", "by", "mark", fact), rows, "");
  }

  static String number(RunRow r) {
    return r.about().no() + "/" + r.root().substring(0, 6);
  }

  private static String day(String at) {
    return at.substring(0, Math.min(DAY_CHARS, at.length()));
  }
}
