package handwheel.drill;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import handwheel.plant.AdaptiveTwin;
import handwheel.plant.Plant;
import handwheel.plant.PlantNumbers;
import handwheel.plant.Quantity;
import handwheel.plant.outside.MarkedTable;
import handwheel.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * The plant's own step of a twentieth of a second beside an adaptive integrator of a library, over
 * every reference run, compared at every tick and not only at the rows. {@link AdaptiveTwin} says
 * what the two share: ports, flags and timers of each tick, nothing else.
 *
 * <p>The twin runs on through every discrete event and is never put back to the plant's states, so
 * an error once made stays. The exception is an explosion, which burns vapour and air at once:
 * those two states of that furnace are taken over.
 */
class IntegratorOutsideTest {
  private static final String PAGE = "accuracy.md";

  /** Set to play all 56 runs, about a minute, in place of a dozen; needed to write the page. */
  private static final String ALL = "outside.all";

  /** Runs longer than this are no drills, and an error in the level has hours to grow. */
  private static final int A_DRILL_S = 600;

  private static final Map<Quantity, Unit> SHOWN =
      Map.ofEntries(
          Map.entry(Quantity.DRUM_PRESSURE, Unit.PSIG),
          Map.entry(Quantity.SUPERHEATER_OUTLET_PRESSURE, Unit.PSIG),
          Map.entry(Quantity.MAIN_LINE_PRESSURE, Unit.PSIG),
          Map.entry(Quantity.DRUM_LEVEL, Unit.INCH),
          Map.entry(Quantity.DRUM_STEAM_FLOW, Unit.KLB_PER_H),
          Map.entry(Quantity.FEED_FLOW, Unit.KLB_PER_H),
          Map.entry(Quantity.SUPERHEATER_OUTLET_TEMPERATURE, Unit.FAHRENHEIT),
          Map.entry(Quantity.SUPERHEATER_METAL_TEMPERATURE, Unit.FAHRENHEIT),
          Map.entry(Quantity.SUPERHEATER_DAMAGE, Unit.ONE),
          Map.entry(Quantity.TUBE_TEMPERATURE, Unit.FAHRENHEIT),
          Map.entry(Quantity.TUBE_DAMAGE, Unit.ONE),
          Map.entry(Quantity.FUEL_HEADER_PRESSURE, Unit.PSIG),
          Map.entry(Quantity.FUEL_FLOW, Unit.LB_PER_H),
          Map.entry(Quantity.AIR_BOX_PRESSURE, Unit.INCH_WATER),
          Map.entry(Quantity.BLOWER_1_SPEED, Unit.ONE),
          Map.entry(Quantity.STACK_BLACK, Unit.PERCENT),
          Map.entry(Quantity.STACK_WHITE, Unit.PERCENT),
          Map.entry(Quantity.FURNACE_SATURATED_GAS_TEMPERATURE, Unit.FAHRENHEIT),
          Map.entry(Quantity.FURNACE_SUPERHEATER_GAS_TEMPERATURE, Unit.FAHRENHEIT),
          Map.entry(Quantity.FURNACE_SATURATED_BRICK_TEMPERATURE, Unit.FAHRENHEIT),
          Map.entry(Quantity.FURNACE_SUPERHEATER_BRICK_TEMPERATURE, Unit.FAHRENHEIT),
          Map.entry(Quantity.FURNACE_SATURATED_VAPOUR_MASS, Unit.KILOGRAM),
          Map.entry(Quantity.FURNACE_SUPERHEATER_VAPOUR_MASS, Unit.KILOGRAM),
          Map.entry(Quantity.SPACE_UPPER_TEMPERATURE, Unit.FAHRENHEIT),
          Map.entry(Quantity.SPACE_LOWER_TEMPERATURE, Unit.FAHRENHEIT),
          Map.entry(Quantity.SPACE_UPPER_DOSE, Unit.ONE),
          Map.entry(Quantity.SPACE_LOWER_DOSE, Unit.ONE));

  /**
   * Half a division of the gauge a man would read it on (5 psi, 10 F, a quarter inch of glass):
   * what the step gets wrong in a drill, nobody may see. Engineering estimate.
   */
  private static final Map<Quantity, Double> UNSEEN =
      Map.of(
          Quantity.DRUM_PRESSURE, 2.5,
          Quantity.MAIN_LINE_PRESSURE, 2.5,
          Quantity.FUEL_HEADER_PRESSURE, 2.5,
          Quantity.DRUM_LEVEL, 0.125,
          Quantity.SUPERHEATER_OUTLET_TEMPERATURE, 5.0,
          Quantity.SUPERHEATER_METAL_TEMPERATURE, 5.0,
          Quantity.SPACE_UPPER_TEMPERATURE, 5.0);

  private static final List<Quantity> EACH_RUN =
      List.of(
          Quantity.DRUM_PRESSURE,
          Quantity.DRUM_LEVEL,
          Quantity.SUPERHEATER_OUTLET_TEMPERATURE,
          Quantity.SUPERHEATER_METAL_TEMPERATURE,
          Quantity.MAIN_LINE_PRESSURE,
          Quantity.FURNACE_SATURATED_GAS_TEMPERATURE);

  /** One of each kind of casualty, those with the fastest changes among them. */
  private static final List<String> A_DOZEN =
      List.of(
          "1a-burner-lost",
          "2b-load-up-response",
          "3b-suction-shifted",
          "4d-one-flooding-flap-stuck",
          "5b-feed-lost-response",
          "6c-throttle-shut-25",
          "7c-leak-100-local",
          "7j-leak-100-both-ends",
          "8c-tube-rupture-response",
          "9b-raw-oil-03",
          "9c-raw-oil-purged",
          "11b-oil-fire-response");

  @Test
  void theStepKeepsUpWithAnAdaptiveIntegrator() {
    Map<Quantity, WorstError> worst = errors();
    List<String> lines = new ArrayList<>();
    List<Trajectory> all = Trajectory.all();
    List<Trajectory> played =
        Boolean.getBoolean(ALL)
            ? all
            : all.stream().filter(run -> A_DOZEN.contains(run.name())).toList();
    for (Trajectory run : played) {
      lines.add(compare(run, worst));
    }
    if (played.size() == 56) {
      MarkedTable.check(PAGE, "worst of all runs", worstOfAll(worst));
      List<String> table = new ArrayList<>(head());
      table.addAll(lines);
      MarkedTable.check(PAGE, "each run", table);
    } else {
      assertThat(played).hasSameSizeAs(A_DOZEN);
      assertThat(MarkedTable.lines(PAGE, "each run")).containsAll(lines);
    }
  }

  private static Map<Quantity, WorstError> errors() {
    Map<Quantity, WorstError> errors = new TreeMap<>();
    SHOWN.forEach((quantity, unit) -> errors.put(quantity, new WorstError(quantity, unit)));
    return errors;
  }

  private static List<String> worstOfAll(Map<Quantity, WorstError> worst) {
    List<String> lines = new ArrayList<>();
    lines.add("| quantity | at most | in run | at |");
    lines.add("|---|---|---|---|");
    worst.values().forEach(error -> lines.add(error.line()));
    return lines;
  }

  private static List<String> head() {
    StringBuilder head = new StringBuilder("| run |");
    for (Quantity quantity : EACH_RUN) {
      head.append(" `").append(quantity.id()).append("` ");
      head.append(WorstError.word(requireNonNull(SHOWN.get(quantity)))).append(" |");
    }
    return List.of(head + " small steps s |", "|---|" + "---|".repeat(EACH_RUN.size()) + "---|");
  }

  /** Plays one run, adds its errors to those of all and returns its own line. */
  private static String compare(Trajectory run, Map<Quantity, WorstError> all) {
    Map<Quantity, WorstError> here = errors();
    Replay replay = new Replay(run);
    AdaptiveTwin twin = new AdaptiveTwin(PlantNumbers.usual());
    replay.play(
        new Replay.Onlooker() {
          @Override
          public void evaluated(Plant plant) {
            Plant other = twin.beside(plant);
            double t = replay.log.tick * Plant.TICK_S;
            all.values().forEach(error -> error.look(plant, other, run.name(), t));
            here.values().forEach(error -> error.look(plant, other, run.name(), t));
          }

          @Override
          public void ruled(Plant plant) {
            twin.advance(plant);
          }
        });
    if (run.durationS() <= A_DRILL_S) {
      UNSEEN.forEach((quantity, limit) -> requireUnseen(run, here, quantity, limit));
    }
    StringBuilder line = new StringBuilder("| ").append(run.name()).append(" |");
    for (Quantity quantity : EACH_RUN) {
      line.append(' ').append(requireNonNull(here.get(quantity)).rounded()).append(" |");
    }
    return line.append(' ').append(twin.slidTicks() / 20).append(" |").toString();
  }

  private static void requireUnseen(
      Trajectory run, Map<Quantity, WorstError> errors, Quantity quantity, double limit) {
    assertThat(requireNonNull(errors.get(quantity)).worst())
        .as("%s, %s", run.name(), quantity.id())
        .isLessThan(limit);
  }
}
