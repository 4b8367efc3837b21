package handwheel.proof;

import handwheel.diagnostics.Finding;
import java.util.List;

/**
 * What playing a script showed.
 *
 * @param findings what is wrong, by place
 * @param seeds seeds the witness was played with
 * @param mutants mistakes and harmless changes that were tried
 * @param cheapTries short lists of orders that were tried
 * @param parTicks median time of the witness from the first cue to his last order, ticks
 */
public record Verdict(
    List<Finding> findings, int seeds, int mutants, int cheapTries, long parTicks) {
  /**
   * Copies the list.
   *
   * @param findings what is wrong, by place
   * @param seeds seeds the witness was played with
   * @param mutants mistakes and harmless changes that were tried
   * @param cheapTries short lists of orders that were tried
   * @param parTicks median time of the witness from the first cue to his last order, ticks
   */
  public Verdict {
    findings = List.copyOf(findings);
  }

  /**
   * Returns whether the script may be run as scored.
   *
   * @return true without a finding that stops a drill
   */
  public boolean isSound() {
    return findings.stream().noneMatch(Finding::stopsTheDrill);
  }
}
