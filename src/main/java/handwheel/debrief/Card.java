package handwheel.debrief;

import handwheel.casualty.Casualty;
import handwheel.casualty.Caution;
import handwheel.casualty.Never;
import handwheel.casualty.Question;
import handwheel.casualty.Step;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.List;

/**
 * The card of a drill that is walked in the real space: cautions first, then brief, start, expected
 * acts with their reasons, forbidden acts, marking sheet, questions with model answers. For the
 * drill leader; a trainee does not see it.
 *
 * @param title the drill's title
 * @param sections in the order in which they are read
 */
public record Card(String title, List<Section> sections) {
  /** What every card says first. */
  static final String STANDING =
      "DRILL. A trainer teaches. The ship's own procedures, local codes and licensed practice"
          + " decide. Nothing on this card is done on a steaming boiler: walk, point, say.";

  /**
   * Copies the list.
   *
   * @param title the drill's title
   * @param sections in the order in which they are read
   */
  public Card {
    sections = List.copyOf(sections);
  }

  /**
   * A section: columns with rows, or texts as rows of one column.
   *
   * @param heading its heading
   * @param columns heads of the columns; none for plain texts
   * @param rows the rows, each as long as the heads, or one text
   */
  public record Section(String heading, List<String> columns, List<List<String>> rows) {
    /**
     * Copies the lists.
     *
     * @param heading its heading
     * @param columns heads of the columns; none for plain texts
     * @param rows the rows, each as long as the heads, or one text
     */
    public Section {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /**
   * Makes the card of a script.
   *
   * @param found the script and its ship
   * @return its card
   */
  public static Card of(Scripts.Found found) {
    Casualty c = found.casualty();
    CardWords words = new CardWords(found.ship());
    List<Section> sections = new ArrayList<>();
    sections.add(texts("Cautions", c.cautions().stream().map(Card::caution).toList()));
    sections.add(texts("Objective", List.of(c.objective())));
    sections.add(texts("Brief, read aloud", List.of(c.brief())));
    sections.add(texts("Initial conditions", start(c, found.ship())));
    sections.add(
        new Section(
            "Expected acts",
            List.of("step", "act", "reason"),
            c.response().stream()
                .map(s -> List.of(s.id(), mind(c, s) + words.act(s), reason(s)))
                .toList()));
    sections.add(texts("Forbidden", c.nevers().stream().map(n -> forbidden(n, words)).toList()));
    sections.add(
        new Section(
            "Marking sheet, " + c.passPoints() + " of 100 to pass",
            List.of("step", "points", "critical", "time", "mark"),
            c.response().stream().map(Card::mark).toList()));
    sections.add(
        new Section(
            "Questions",
            List.of("ask", "a good answer says"),
            c.questions().stream().map(Card::question).toList()));
    return new Card(c.title(), sections.stream().filter(s -> !s.rows().isEmpty()).toList());
  }

  private static Section texts(String heading, List<String> texts) {
    return new Section(heading, List.of(), texts.stream().map(List::of).toList());
  }

  private static String caution(Caution c) {
    return c.signal()
        + ". "
        + String.join(" ", c.hazard(), c.consequence(), c.avoid())
        + " Before: "
        + String.join(", ", c.before())
        + ".";
  }

  private static List<String> start(Casualty c, Ship ship) {
    String crew =
        switch (c.start().crew()) {
          case GREEN -> "green: nothing is done unordered";
          case DRILLED -> "drilled: standing acts are done unordered";
          case DRAWN -> "green or drilled, as it comes";
        };
    return List.of("Ship: " + ship.name(), "Condition: " + c.start().condition(), "Watch: " + crew);
  }

  /** The caution comes before the act it belongs to. */
  private static String mind(Casualty c, Step step) {
    List<String> cautions =
        c.cautions().stream()
            .filter(caution -> caution.before().contains(step.id()))
            .map(caution -> caution.signal() + " " + caution.id())
            .toList();
    return cautions.isEmpty() ? "" : "First say the caution: " + String.join(", ", cautions) + ". ";
  }

  private static String reason(Step step) {
    String rule = step.grade().rule();
    return step.grade().why() + (rule.isEmpty() ? "" : " (" + rule + ")");
  }

  private static String forbidden(Never never, CardWords words) {
    return words.never(never) + ": " + never.id() + ". " + never.grade().why();
  }

  private static List<String> mark(Step step) {
    String critical = step.grade().isCritical() ? "critical" : "";
    return List.of(step.id(), String.valueOf(step.grade().points()), critical, "____", "____");
  }

  private static List<String> question(Question question) {
    return List.of(question.ask(), question.answer());
  }
}
