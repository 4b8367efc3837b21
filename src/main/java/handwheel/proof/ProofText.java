package handwheel.proof;

import handwheel.casualty.Casualty;
import handwheel.drill.Engine;
import handwheel.ship.Ship;
import java.util.List;
import java.util.OptionalInt;

/**
 * The proof of a script as a file beside it: which script, ship and engine it holds for, and what
 * was played. It is no seal against a forger; whoever doubts it proves the script again.
 */
public final class ProofText {
  /** How the name of a proof's file ends. */
  public static final String END = ".proof";

  private static final String PAR = "par: ";
  private static final String HEAD = "handwheel proof 1";

  private ProofText() {}

  /**
   * Prints a proof.
   *
   * @param casualty the script
   * @param ship its ship
   * @param verdict what playing it showed; sound
   * @return lines with a line end each
   */
  public static String of(Casualty casualty, Ship ship, Verdict verdict) {
    return binding(casualty, ship)
        + "witness: all points with "
        + verdict.seeds()
        + " seeds\nmutants: "
        + verdict.mutants()
        + "\ncheap tries: "
        + verdict.cheapTries()
        + ", none passed\n"
        + PAR
        + verdict.parTicks() / Engine.TICKS_PER_S
        + " s\n";
  }

  /**
   * Returns the par time a proof tells: the witness's, from the first cue to his last order.
   *
   * @param text of the proof's file
   * @return whole seconds; empty if the text tells none
   */
  public static OptionalInt parS(String text) {
    return text.lines()
        .filter(l -> l.matches(PAR + "[0-9]{1,6} s"))
        .mapToInt(l -> Integer.parseInt(l.substring(PAR.length(), l.length() - 2)))
        .findFirst();
  }

  private static String binding(Casualty casualty, Ship ship) {
    return String.join(
        "\n",
        HEAD,
        "script: " + casualty.id() + " " + casualty.sha256(),
        "ship: " + ship.id() + " " + ship.sha256(),
        "engine: " + Engine.VERSION,
        "");
  }

  /**
   * Returns what a proof was made for and no longer is.
   *
   * @param text of the proof's file
   * @param casualty the script as it is
   * @param ship its ship as it is
   * @return {@code script}, {@code ship}, {@code engine}; none if the proof holds
   */
  public static List<String> outdated(String text, Casualty casualty, Ship ship) {
    List<String> lines = text.lines().toList();
    return binding(casualty, ship)
        .lines()
        .filter(line -> !lines.contains(line))
        .map(line -> line.startsWith(HEAD) ? "form" : line.substring(0, line.indexOf(':')))
        .toList();
  }
}
