package handwheel.proof;

import handwheel.diagnostics.Finding;
import handwheel.diagnostics.Severity;
import handwheel.diagnostics.SourceSpot;

/**
 * What playing a script can find wrong with it. The page docs/findings.md has a section for each; a
 * test holds the two together. Ids never change their meaning.
 */
enum ProofId {
  TOO_FAR(
      "proof.too-far",
      Severity.ERROR,
      "A step's time is too short for the shortest walk and work."),
  WITNESS_LACKS_POINTS(
      "proof.witness-lacks-points",
      Severity.ERROR,
      "The witness does not earn all points with some seed."),
  IDLE_PASSES("proof.idle-passes", Severity.SAFETY, "A run in which nothing is ordered passes."),
  CHEAP_WIN(
      "proof.cheap-win", Severity.SAFETY, "A run passes without an order for a critical step."),
  MISTAKE_NOT_CHARGED(
      "proof.mistake-not-charged", Severity.ERROR, "A mistake costs nothing, or not what it must."),
  HARMLESS_CHARGED("proof.harmless-charged", Severity.ERROR, "Something harmless costs points."),
  UNLOSABLE_POINTS(
      "proof.unlosable-points", Severity.ERROR, "No mistake that was tried loses a step's points."),
  UNBROKEN_RULE(
      "proof.unbroken-rule", Severity.WARNING, "No order that was tried breaks a forbidden act."),
  ORDER_NOT_NEEDED(
      "proof.order-not-needed", Severity.NOTE, "A line of the witness serves no step."),
  MANY_CUES("proof.many-cues", Severity.WARNING, "Too many cues come within a short time.");

  private final String id;
  private final Severity severity;
  private final String meaning;

  ProofId(String id, Severity severity, String meaning) {
    this.id = id;
    this.severity = severity;
    this.meaning = meaning;
  }

  /** Returns the stable dotted id. */
  String id() {
    return id;
  }

  Severity severity() {
    return severity;
  }

  /** Returns what it means, one sentence. */
  String meaning() {
    return meaning;
  }

  /** Makes a finding of it. */
  Finding at(SourceSpot spot, String message, String mend) {
    return new Finding(id, severity, spot, message, mend);
  }
}
