package handwheel.proof;

import handwheel.casualty.Casualty;
import handwheel.drill.Draws;
import handwheel.drill.Engine;
import handwheel.scoring.CriticalAct;
import handwheel.ship.Order;
import handwheel.ship.Ship;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;

/**
 * The orders that are right for one casualty, said in another. What a script tests is which of
 * several responses is taken; so the response to something else must fail a critical act.
 */
public final class Crossed {
  private static final int SEEDS = 12;

  private Crossed() {}

  /**
   * A script with the runs of its witness, one for each drawn case.
   *
   * @param casualty the script
   * @param ship its ship
   * @param bases its right runs
   */
  public record Script(Casualty casualty, Ship ship, List<Outcome> bases) {
    /**
     * Copies the list.
     *
     * @param casualty the script
     * @param ship its ship
     * @param bases its right runs
     */
    public Script {
      bases = List.copyOf(bases);
    }

    private static WitnessPlayer player(Casualty casualty, Ship ship, long seed) {
      return new WitnessPlayer(Draws.inRun(casualty, seed), ship);
    }

    /**
     * Plays the witness of a script.
     *
     * @param casualty the script, with a witness
     * @param ship its ship
     * @param trials plays in it
     * @return the script with a right run for each case
     */
    public static Script of(Casualty casualty, Ship ship, Trials trials) {
      List<Trial> witness =
          LongStream.rangeClosed(1, SEEDS)
              .mapToObj(s -> new Trial("witness", s, () -> player(casualty, ship, s)))
              .toList();
      List<Outcome> right = trials.play(witness).stream().filter(Outcome::isRight).toList();
      List<Base> bases = Bases.of(casualty, ship, right);
      return new Script(casualty, ship, bases.stream().map(Base::run).toList());
    }
  }

  /**
   * What came of it.
   *
   * @param happened id of the script that was played, with its drawn words
   * @param ordered id of the script whose response was ordered, with its drawn words
   * @param points what it earned
   * @param failed critical acts that failed
   * @param critical critical acts in all
   */
  public record Cell(String happened, String ordered, int points, int failed, int critical) {
    /**
     * Returns whether the other response failed no critical act.
     *
     * @return true if the script cannot tell the two responses apart
     */
    public boolean isClean() {
      return failed == 0;
    }
  }

  /**
   * Says the right orders of one script in another, at the same times from the first cue.
   *
   * @param happens the script that is played
   * @param ordered the script whose witness's orders are said; another, or the same, of which only
   *     the other cases are tried
   * @param trials plays in the first
   * @return a cell for each case of the one and each of the other
   */
  public static List<Cell> of(Script happens, Script ordered, Trials trials) {
    List<Trial> tried = new ArrayList<>();
    for (Outcome base : happens.bases()) {
      for (Outcome other : ordered.bases()) {
        String name = name(ordered.casualty(), other);
        if (!name.equals(name(happens.casualty(), base))) {
          tried.add(trial(happens, base, other, name));
        }
      }
    }
    return trials.play(tried).stream().map(o -> cell(happens.casualty(), o)).toList();
  }

  private static Cell cell(Casualty casualty, Outcome o) {
    List<CriticalAct> acts = o.sheet().critical();
    int failed = (int) acts.stream().filter(CriticalAct::isFailure).count();
    return new Cell(name(casualty, o), o.trial().name(), o.sheet().points(), failed, acts.size());
  }

  private static String name(Casualty casualty, Outcome run) {
    return run.words().isEmpty()
        ? casualty.id()
        : casualty.id() + " (" + String.join(", ", run.words()) + ")";
  }

  private static Trial trial(Script happens, Outcome base, Outcome other, String name) {
    long shift = start(base) - start(other);
    Base reader = Base.of(happens.casualty(), happens.ship(), base);
    List<ListPlayer.Timed> timed =
        other.orders().stream()
            .flatMap(
                said -> {
                  Optional<Order> order = AlteredPlayer.read(reader.reader(), said.say());
                  long at = Math.max(Engine.TICKS_PER_S, said.t() + shift);
                  return order.map(o -> new ListPlayer.Timed(at, o)).stream();
                })
            .toList();
    return new Trial(name, reader.seed(), () -> new ListPlayer(timed));
  }

  private static long start(Outcome run) {
    return run.cueTicks().isEmpty() ? 0 : run.cueTicks().get(0);
  }
}
