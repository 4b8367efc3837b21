package handwheel.board;

import handwheel.logbook.Minute;
import java.util.ArrayList;
import java.util.List;

/**
 * What a board is about to decide, and what stands against it.
 *
 * @param drill id of the drill
 * @param verdict {@code qualified}, {@code again} or {@code not-qualified}
 * @param until last day it holds, {@code 2032-02-03}; empty only where nobody is qualified
 * @param reason why, in words
 * @param by pseudonym of the qualifier
 * @param key his public key
 */
public record Ruling(
    String drill, String verdict, String until, String reason, String by, String key) {
  /** The words a decision may have. */
  public static final List<String> VERDICTS = List.of("qualified", "again", "not-qualified");

  private static final int REASON_CHARS = 10;
  private static final String ANY = "any";

  /**
   * Says what stands against the decision.
   *
   * @param candidate whom it is about
   * @param today today's date, {@code 2031-02-03}
   * @return sentences for people; empty if it may be signed
   */
  public List<String> objections(Candidate candidate, String today) {
    List<String> all = new ArrayList<>();
    if (!VERDICTS.contains(verdict)) {
      all.add("`" + verdict + "` is none of " + String.join(", ", VERDICTS) + ".");
    }
    if (reason.strip().length() < REASON_CHARS) {
      all.add("A decision needs its reason in words.");
    }
    if (by.equals(candidate.id())) {
      all.add("Nobody decides on himself.");
    }
    if (!isNamed(candidate.minutes(), today)) {
      all.add(
          "No line of the minutes names "
              + by
              + " with this key as qualifier for "
              + drill
              + " today; `qualifier` names one.");
    }
    if (verdict.equals("qualified")) {
      all.addAll(againstQualifying(candidate, today));
    }
    return all;
  }

  private boolean isNamed(List<Minute> minutes, String today) {
    return Minute.last(
            minutes.stream()
                .filter(m -> m.kind().equals("named") && m.of().equals(by) && !m.by().equals(by))
                .filter(m -> m.fact("scope").equals(drill) || m.fact("scope").equals(ANY)))
        .filter(m -> m.fact("key").equals(key) && m.fact("until").compareTo(today) >= 0)
        .isPresent();
  }

  private List<String> againstQualifying(Candidate candidate, String today) {
    List<String> all = new ArrayList<>();
    if (!until.matches("\\d{4}-\\d{2}-\\d{2}") || until.compareTo(today) <= 0) {
      all.add("A qualification needs the last day it holds, such as 2032-02-03, after today.");
    }
    List<RunRow> counting =
        candidate.runs().stream()
            .filter(r -> r.run().script().equals(drill) && r.mayCount())
            .toList();
    if (counting.isEmpty()) {
      all.add("No run of this drill counts: scored, finished, signed, attested by another.");
      return all;
    }
    if (counting.stream().allMatch(r -> r.about().attests().equals(by))) {
      all.add(by + " attested every run that counts: who trained him alone does not decide alone.");
    }
    if (counting.stream().noneMatch(r -> !candidate.marks(r).isEmpty())) {
      all.add("No assessor marked a run that counts before its score was shown.");
    }
    return all;
  }
}
