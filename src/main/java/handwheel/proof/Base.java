package handwheel.proof;

import handwheel.casualty.Casualty;
import handwheel.casualty.Step;
import handwheel.casualty.StepTest;
import handwheel.casualty.WitnessLine;
import handwheel.diagnostics.SourceSpot;
import handwheel.drill.Draws;
import handwheel.scoring.StepResult;
import handwheel.ship.Order;
import handwheel.ship.OrderText;
import handwheel.ship.Ship;
import java.util.List;
import java.util.Optional;

/**
 * The run of the witness that all mutants are made from.
 *
 * @param casualty the script with what that run drew
 * @param ship its ship
 * @param run the run
 */
record Base(Casualty casualty, Ship ship, Outcome run) {
  private static final String PREFERENCE = "O1";

  static Base of(Casualty script, Ship ship, Outcome run) {
    return new Base(Draws.inRun(script, run.trial().seed()), ship, run);
  }

  long seed() {
    return run.trial().seed();
  }

  int orders() {
    return run.orders().size();
  }

  String say(int index) {
    return run.orders().get(index).say();
  }

  OrderText reader() {
    return new OrderText(ship, casualty.messages());
  }

  /** Returns the steps that the order at an index earns points for. */
  List<Step> served(int index) {
    int n = run.orders().get(index).n();
    List<String> ids =
        run.sheet().steps().stream()
            .filter(r -> r.orders().contains(n))
            .map(StepResult::step)
            .toList();
    return casualty.response().stream().filter(s -> ids.contains(s.id())).toList();
  }

  /** Returns the index of the order that serves a step first, or empty. */
  Optional<Integer> serving(String step) {
    for (int i = 0; i < orders(); i++) {
      if (served(i).stream().anyMatch(s -> s.id().equals(step))) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /**
   * Returns whether a step of the order at one index must wait for one at another. The preference
   * for the superheater (O1) does not count: it is not graded within a few seconds.
   */
  boolean mustFollow(int later, int earlier) {
    List<String> before = served(earlier).stream().map(Step::id).toList();
    return served(later).stream()
        .flatMap(s -> s.after().entrySet().stream())
        .anyMatch(e -> before.contains(e.getKey()) && !e.getValue().equals(PREFERENCE));
  }

  /**
   * Returns whether the steps of the order at an index are judged by when it is said. A reading or
   * a head count is judged by when it comes, and a man may still have to walk there.
   */
  boolean isByOrder(int index) {
    return served(index).stream()
        .allMatch(
            s -> s.test() instanceof StepTest.FittingIs || s.test() instanceof StepTest.Ordered);
  }

  /** Returns whether the order at an index brings a fitting to a graded state. */
  boolean servesFitting(int index) {
    return served(index).stream().anyMatch(s -> s.test() instanceof StepTest.FittingIs);
  }

  /** Returns where the order at an index stands in the script. */
  SourceSpot spot(int index) {
    return casualty.witness().stream()
        .filter(l -> l.say().equals(say(index)))
        .map(WitnessLine::spot)
        .findFirst()
        .orElseGet(() -> casualty.witness().get(0).spot());
  }

  /** Makes a trial of the witness with an order of somebody else before his first. */
  Trial preceded(String name, long tick, Order order) {
    return new Trial(
        name,
        seed(),
        () ->
            new JoinedPlayer(
                new ListPlayer(List.of(new ListPlayer.Timed(tick, order))),
                new WitnessPlayer(casualty, ship)));
  }

  /** Makes a trial of the witness with his orders altered. */
  Trial altered(String name, Alteration alteration) {
    return new Trial(
        name,
        seed(),
        () -> new AlteredPlayer(new WitnessPlayer(casualty, ship), alteration, reader()));
  }
}
