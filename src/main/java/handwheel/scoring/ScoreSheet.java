package handwheel.scoring;

import handwheel.logbook.Entry;
import java.util.List;

/**
 * What a run is worth and why. The points of the charges add up to 100 less {@code points}.
 *
 * @param points 0 to 100
 * @param isPass whether no critical act failed and the points reach the pass mark
 * @param charges every charge, in the order of the script: steps, rules, outcomes
 * @param critical every critical act, in the order of the script
 * @param steps every step, in the order of the script
 * @param notes what is told and not charged, in order of time
 */
public record ScoreSheet(
    int points,
    boolean isPass,
    List<Charge> charges,
    List<CriticalAct> critical,
    List<StepResult> steps,
    List<Note> notes) {
  /**
   * Copies the lists.
   *
   * @param points 0 to 100
   * @param isPass whether no critical act failed and the points reach the pass mark
   * @param charges every charge, in the order of the script: steps, rules, outcomes
   * @param critical every critical act, in the order of the script
   * @param steps every step, in the order of the script
   * @param notes what is told and not charged, in order of time
   */
  public ScoreSheet {
    charges = List.copyOf(charges);
    critical = List.copyOf(critical);
    steps = List.copyOf(steps);
    notes = List.copyOf(notes);
  }

  /**
   * Returns the score as a line of the record.
   *
   * @return the entry
   */
  public Entry.Score toEntry() {
    return new Entry.Score(
        points, isPass ? "pass" : "fail", charges.stream().map(ScoreSheet::loss).toList());
  }

  private static Entry.Loss loss(Charge c) {
    return new Entry.Loss(
        c.points(), c.type().word(), c.step(), c.tick(), c.why(), c.basis().word());
  }
}
