package handwheel.debrief;

import handwheel.drill.Player;
import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.Scorer;
import handwheel.ship.OrderText;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Everything a debrief tells of one run, and its two printed forms. */
public final class Debrief {
  /** In an action this word stands for the moment at which it turned. */
  public static final String TURNED = "TURNED";

  private final Request request;
  private final List<Entry> run;
  private final ScoreSheet sheet;
  private final Optional<Simulated> simulated;
  private final Lost lost;
  private final Lesson lesson;
  private final StepWords words;

  /**
   * What a debrief is made from.
   *
   * @param entries entries of the record, with or without a score
   * @param found its ship and script
   * @param troubles why the record does not hold; empty if it does
   * @param own the trainee's own three lines; empty if he was not asked
   * @param actions what to do now, as command lines or sentences
   * @param day day of the run, if it is known
   */
  public record Request(
      List<Entry> entries,
      Scripts.Found found,
      List<String> troubles,
      Optional<OwnLines> own,
      List<String> actions,
      Optional<LocalDate> day) {
    /**
     * Copies the lists.
     *
     * @param entries entries of the record, with or without a score
     * @param found its ship and script
     * @param troubles why the record does not hold; empty if it does
     * @param own the trainee's own three lines; empty if he was not asked
     * @param actions what to do now, as command lines or sentences
     * @param day day of the run, if it is known
     */
    public Request {
      entries = List.copyOf(entries);
      troubles = List.copyOf(troubles);
      actions = List.copyOf(actions);
    }
  }

  /**
   * What only a simulation can tell.
   *
   * @param outcome what the run did
   * @param costs what each mistake cost
   * @param allMended what the run comes to with every mistake mended
   */
  public record Simulated(Outcome outcome, List<Cost> costs, Outcome allMended) {
    /**
     * Copies the list.
     *
     * @param outcome what the run did
     * @param costs what each mistake cost
     * @param allMended what the run comes to with every mistake mended
     */
    public Simulated {
      costs = List.copyOf(costs);
    }
  }

  private Debrief(
      Request request, ScoreSheet sheet, Optional<Simulated> simulated, Lost.Told told) {
    this.request = request;
    this.run = withoutScore(request.entries());
    this.sheet = sheet;
    this.simulated = simulated;
    this.words = told.words();
    this.lost = new Lost(request.found().casualty(), told);
    List<Cost> costs = simulated.map(Simulated::costs).orElse(List.of());
    this.lesson =
        new Lessons(lost, Times.of(run), words).of(request.found().casualty(), sheet, costs);
  }

  /** Makes a debrief of entries, one simulation after the other. */
  static Debrief of(Request request, Player witness) {
    return of(request, Groundwork.of(request, witness), Tasks.ONE_BY_ONE);
  }

  /**
   * Makes a debrief. A record that does not hold is told from its lines alone and not simulated.
   *
   * @param request what it is made from
   * @param ground what was simulated for it already
   * @param tasks does the further simulations
   * @return the debrief
   */
  public static Debrief of(Request request, Groundwork ground, Tasks tasks) {
    Scripts.Found found = request.found();
    List<Entry> run = withoutScore(request.entries());
    ScoreSheet sheet = Scorer.score(found.casualty(), found.ship(), run);
    Rehearsal.Setup setup = Groundwork.setup(found, (Entry.Run) run.get(0));
    Optional<Simulated> simulated =
        ground.run().map(played -> new Costs(setup, played, ground.witness()).simulated(tasks));
    return new Debrief(request, sheet, simulated, told(found, run, ground.witness()));
  }

  private static Lost.Told told(Scripts.Found found, List<Entry> run, Played witness) {
    Names names = new Names(found.ship());
    OrderText reader = new OrderText(found.ship(), found.casualty().messages());
    StepWords words = new StepWords(names, new Cues(found.casualty()), reader);
    return new Lost.Told(
        run,
        words,
        new Plain(found.ship(), found.casualty(), words),
        new Trigger(found.casualty(), words, names),
        Lost.says(witness));
  }

  private static List<Entry> withoutScore(List<Entry> entries) {
    return entries.stream().filter(e -> !(e instanceof Entry.Score)).toList();
  }

  /**
   * Returns the score sheet.
   *
   * @return the score, reckoned again
   */
  public ScoreSheet sheet() {
    return sheet;
  }

  /**
   * Returns what the simulation tells.
   *
   * @return empty if the record does not hold
   */
  public Optional<Simulated> simulated() {
    return simulated;
  }

  /**
   * Returns when the drill is due again.
   *
   * @return the clocks, counted from the day of the run
   */
  public DueAgain due() {
    return DueAgain.after(sheet.charges(), request.found().ship().steaming().currencyDays());
  }

  /**
   * Returns the lesson.
   *
   * @return the lesson
   */
  public Lesson lesson() {
    return lesson;
  }

  /**
   * Returns what it was made from.
   *
   * @return the request
   */
  public Request request() {
    return request;
  }

  /**
   * Prints it as text.
   *
   * @return lines of at most 80 characters
   */
  public List<String> text() {
    return PageText.lines(page(true));
  }

  /**
   * Prints it as HTML.
   *
   * @return one whole file
   */
  public String html() {
    return PageHtml.of(page(false));
  }

  List<Entry> run() {
    return run;
  }

  Lost lost() {
    return lost;
  }

  StepWords words() {
    return words;
  }

  private Page page(boolean isText) {
    return new DebriefPage(this, isText).page();
  }
}
