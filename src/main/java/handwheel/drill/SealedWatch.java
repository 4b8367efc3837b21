package handwheel.drill;

import handwheel.casualty.Amount;
import handwheel.casualty.Casualty;
import handwheel.casualty.Caution;
import handwheel.casualty.Phase;
import handwheel.casualty.PhaseAct;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A script inside an ordinary watch: some minutes in which the engine room calls and nothing
 * happens, then what the script says. Title, brief and cautions give nothing away; every report of
 * the ship may be passed. What is graded stays the script's.
 *
 * <p>The length of the watch and its calls are drawn from the seed of the run, so that the same run
 * can be made again.
 */
public final class SealedWatch {
  /** How long nothing happens, s. */
  private static final double SHORTEST_S = 120;

  private static final double LONGEST_S = 300;

  /** Between two calls, s. */
  private static final double SHORTEST_GAP_S = 25;

  private static final double LONGEST_GAP_S = 80;
  private static final String START = "steaming-";

  private final Casualty casualty;
  private final Ship ship;
  private final SplitMix64 stream;

  private SealedWatch(Casualty casualty, Ship ship, long seed) {
    this.casualty = casualty;
    this.ship = ship;
    this.stream = SplitMix64.of(seed, "ordinary watch");
  }

  /**
   * Puts a script inside an ordinary watch.
   *
   * @param casualty the script
   * @param ship her ship, whose ordinary watch it is
   * @param seed seed of the run
   * @return what is played, shown and scored; id and hash are the script's
   */
  public static Casualty of(Casualty casualty, Ship ship, long seed) {
    return new SealedWatch(casualty, ship, seed).sealed();
  }

  /**
   * Returns what a run of a mode plays.
   *
   * @param casualty the script
   * @param ship her ship
   * @param seed seed of the run
   * @param mode how it is run
   * @return the script with what was drawn, inside an ordinary watch if the mode is sealed
   */
  public static Casualty played(Casualty casualty, Ship ship, long seed, Mode mode) {
    Casualty inRun = Draws.inRun(casualty, seed);
    return mode == Mode.SEALED ? of(inRun, ship, seed) : inRun;
  }

  private Casualty sealed() {
    List<Phase> watch = watch();
    double watchS = watch.stream().mapToDouble(SealedWatch::lengthS).sum();
    return new Casualty(
        casualty.id(),
        "A sealed drill",
        casualty.family(),
        casualty.ship(),
        casualty.objective(),
        casualty.sha256(),
        cautions(),
        brief(),
        casualty.start(),
        casualty.limitTicks() + Engine.ticks(watchS),
        casualty.vary(),
        Stream.concat(watch.stream(), casualty.phases().stream()).toList(),
        casualty.response(),
        casualty.nevers(),
        casualty.outcomes(),
        casualty.passPoints(),
        casualty.witness(),
        casualty.questions(),
        ship.steaming().reports());
  }

  private String brief() {
    String start = casualty.start().condition().replace('-', ' ');
    return "The plant steams at: "
        + start
        + ". You have the watch. Something may happen, or nothing. If you find nothing wrong, say"
        + " so to the watch engineer when he asks; if something is wrong, deal with it.";
  }

  private List<Caution> cautions() {
    return ship.steaming().hazards().stream().map(Caution::of).toList();
  }

  private List<Phase> watch() {
    double leftS = whole(SHORTEST_S, LONGEST_S);
    List<Phase> phases = new ArrayList<>();
    for (int n = 1; leftS > 0; n++) {
      double gapS = whole(SHORTEST_GAP_S, LONGEST_GAP_S);
      boolean isLast = leftS - gapS < SHORTEST_GAP_S;
      double lengthS = isLast ? leftS : gapS;
      leftS = isLast ? 0 : leftS - gapS;
      String next = isLast ? casualty.phases().get(0).id() : START + (n + 1);
      phases.add(new Phase(START + n, acts(n), List.of(way(next, lengthS)), false));
    }
    return phases;
  }

  private static Phase.Transition way(String to, double afterS) {
    return new Phase.Transition(to, Optional.of(new Amount.Fixed(afterS)), Optional.empty());
  }

  /** Nothing is called as the watch begins. */
  private List<PhaseAct> acts(int n) {
    List<String> calls = ship.steaming().calls();
    if (n == 1 || calls.isEmpty()) {
      return List.of();
    }
    String text = calls.get((int) (stream.nextDouble() * calls.size()));
    return List.of(new PhaseAct.Cue(START + n, PhaseAct.Sense.TOLD, "everywhere", text));
  }

  private static double lengthS(Phase phase) {
    return ((Amount.Fixed) phase.next().get(0).afterS().orElseThrow()).si();
  }

  private double whole(double fromS, double toS) {
    return StrictMath.floor(stream.between(fromS, toS));
  }
}
