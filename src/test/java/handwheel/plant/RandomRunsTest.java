package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * A thousand seeded runs of random faults and orders: every state stays finite and in its physical
 * range, no mass is negative, none is lost. One minute each; with {@code -Dsoak=true} ten.
 */
class RandomRunsTest {
  private static final int RUNS = 1_000;
  private static final int TICKS = Boolean.getBoolean("soak") ? 12_000 : 1_200;

  /** Furnace oil and the main line lose a little in their exponential steps. */
  private static final List<String> BOOKED =
      List.of("boiler water and steam", "boiler heat", "feed tanks", "all water", "sea water");

  @Test
  void nothingImpossibleComesOfRandomFaultsAndOrders() {
    List<String> wrong = new ArrayList<>();
    Set<String> left = new TreeSet<>();
    for (long seed = 0; seed < RUNS; seed++) {
      play(seed, wrong, left);
    }
    assertThat(wrong.stream().limit(20)).isEmpty();
    assertThat(left)
        .as("the draws reach the ends of the model")
        .contains("bilge depth", "blower 1 speed", "boiler water volume", "oil on the deck plates");
  }

  @Test
  void aSeedDrawsTheSameAgain() {
    Plant first = Starts.plant(new RandomMoves(7, TICKS).start);
    Plant second = Starts.plant(new RandomMoves(7, TICKS).start);
    run(first, new RandomMoves(7, TICKS), new ArrayList<>(), new Ranges());
    run(second, new RandomMoves(7, TICKS), new ArrayList<>(), new Ranges());
    assertThat(StateDigest.of(first)).isEqualTo(StateDigest.of(second));
  }

  /** The check itself can fail. */
  @Test
  void whatCannotBeIsFound() {
    Plant plant = Starts.plant("50");
    plant.evaluate();
    List<String> wrong = new ArrayList<>();
    PhysicalRanges.check(plant, wrong);
    assertThat(wrong).isEmpty();
    plant.walk((name, x) -> name.equals("reserve-tank.mass") ? -1 : x);
    plant.walk((name, x) -> name.equals("drum.bubbles") ? Double.NaN : x);
    plant.evaluate();
    PhysicalRanges.check(plant, wrong);
    assertThat(wrong)
        .contains("reserve-tank.mass is -1.0", "drum.bubbles is NaN", "drum.level is NaN");
  }

  private static void play(long seed, List<String> wrong, Set<String> left) {
    RandomMoves moves = new RandomMoves(seed, TICKS);
    Plant plant = Starts.plant(moves.start);
    List<String> here = new ArrayList<>();
    Ranges ranges = new Ranges();
    run(plant, moves, here, ranges);
    left.addAll(ranges.left);
    here.forEach(w -> wrong.add("seed " + seed + ": " + w + " after " + moves.text()));
  }

  private static void run(Plant plant, RandomMoves moves, List<String> wrong, Ranges ranges) {
    Balances books = new Balances();
    boolean isOpen = true;
    for (int tick = 0; tick < TICKS && wrong.isEmpty(); tick++) {
      moves.apply(plant, tick);
      plant.evaluate();
      if (isOpen) {
        books.evaluated(plant);
      }
      plant.applyRules(ranges);
      if (tick % 20 == 0) {
        PhysicalRanges.check(plant, wrong);
      }
      plant.advance();
      if (isOpen && (!ranges.left.isEmpty() || tick == TICKS - 1)) {
        isOpen = false;
        close(books, plant, wrong);
      }
    }
  }

  /** Mass and heat of the boiler and all water close until the run leaves the model. */
  private static void close(Balances books, Plant plant, List<String> wrong) {
    plant.evaluate();
    for (Balances.Account account : books.close(plant)) {
      double limit = account.name().equals("feed tanks") ? 1e-8 : 1e-4;
      if (BOOKED.contains(account.name()) && account.isUsed()) {
        if (!(Math.abs(account.residual()) < limit)) {
          wrong.add(account.name() + " misses " + account.residual());
        }
      }
    }
  }

  /** Notes the ranges that were left. */
  private static final class Ranges extends QuietEvents {
    private final Set<String> left = new TreeSet<>();

    @Override
    public void leftRange(ModelRange range, double si) {
      left.add(range.name());
    }
  }
}
