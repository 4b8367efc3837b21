package handwheel.debrief;

import handwheel.scoring.Charge;
import handwheel.scoring.ErrorClass;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * When a drill is due again. Two clocks run: one for doing the acts, the right ones in the right
 * order, one for doing them in time. What drilling gained is halved after 6.5 months for the first
 * and after 13 months for the second (means over many trained procedures: Tatel and Ackerman,
 * meta-analysis of the decay of procedural skill, from its abstract); between them the retained
 * share is taken as 2^(-t/h). A clock of which this run lost points is due at once. The ship's
 * currency period caps both.
 *
 * @param orderDays days until order is due; 0: now
 * @param speedDays days until speed is due; 0: now
 * @param currencyDays the ship's figure: after so many days it is due in any case
 */
public record DueAgain(int orderDays, int speedDays, int currencyDays) {
  /** After so many months half of what was gained in order is lost. */
  public static final double ORDER_HALF_MONTHS = 6.5;

  /** After so many months half of what was gained in speed is lost. */
  public static final double SPEED_HALF_MONTHS = 13;

  /** What a date stands on when nothing is known of the run but its day. */
  public static final String AFTER_A_CLEAN_RUN = "if the last run was clean";

  /** Due when no more than this share of what was gained in order is left; ours, no source. */
  static final double ORDER_KEPT = 0.8;

  /** Due when no more than this share of what was gained in speed is left; ours, no source. */
  static final double SPEED_KEPT = 0.9;

  private static final double DAYS_A_MONTH = 365.25 / 12;

  /**
   * Returns after how many months a share of what was gained is left.
   *
   * @param halfMonths months after which half is left, above 0
   * @param kept share that is left, above 0, at most 1
   * @return {@code halfMonths * log2(1 / kept)}
   */
  public static double months(double halfMonths, double kept) {
    return halfMonths * StrictMath.log(1 / kept) / StrictMath.log(2);
  }

  /**
   * Reckons the clocks after a run.
   *
   * @param charges what the run lost points on
   * @param currencyDays the ship's figure
   * @return the clocks, counted from the day of the run
   */
  public static DueAgain after(List<Charge> charges, int currencyDays) {
    boolean isSlow = charges.stream().anyMatch(c -> c.type() == ErrorClass.LATE);
    boolean isWrong =
        charges.stream()
            .anyMatch(c -> c.type() != ErrorClass.LATE && c.type() != ErrorClass.NO_FAULT);
    return new DueAgain(
        isWrong ? 0 : days(ORDER_HALF_MONTHS, ORDER_KEPT),
        isSlow ? 0 : days(SPEED_HALF_MONTHS, SPEED_KEPT),
        currencyDays);
  }

  private static int days(double halfMonths, double kept) {
    return (int) (months(halfMonths, kept) * DAYS_A_MONTH);
  }

  /**
   * Returns the earliest of the clocks.
   *
   * @return days from the day of the run
   */
  public int days() {
    return Math.min(currencyDays, Math.min(orderDays, speedDays));
  }

  /**
   * Says it in words.
   *
   * @param day day of the run, if it is known
   * @return sentences
   */
  public List<String> lines(Optional<LocalDate> day) {
    return List.of(
        "Due again "
            + when(days(), day)
            + ". Order: "
            + clock(orderDays, day)
            + ". Speed: "
            + clock(speedDays, day)
            + ". In any case "
            + when(currencyDays, day)
            + " (this ship's figure).",
        "Assumed: half of what drilling gained in order is gone after 6.5 months, in speed after 13"
            + " (means over many skills, not measured on you); due when 80 % and 90 % are left.");
  }

  private static String clock(int days, Optional<LocalDate> day) {
    return days == 0 ? "now, this run lost points on it" : when(days, day);
  }

  private static String when(int days, Optional<LocalDate> day) {
    if (days == 0) {
      return "now";
    }
    String after = days + " days after the run";
    return day.map(d -> "by " + d.plusDays(days) + ", " + after).orElse("after " + days + " days");
  }
}
