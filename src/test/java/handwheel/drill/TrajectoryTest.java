package handwheel.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import handwheel.plant.Plant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Holds plant and control laws to 56 runs of an independent study of the same equations: every
 * printed figure of every row, every event at its tick.
 */
class TrajectoryTest {
  private static final double SAME_TICK_S = 1e-9;

  @TestFactory
  Stream<DynamicTest> everyRunAgrees() {
    List<Trajectory> all = Trajectory.all();
    assertThat(all).hasSize(56);
    return all.stream().map(run -> dynamicTest(run.name(), () -> check(run)));
  }

  private static void check(Trajectory run) {
    List<Column> columns = run.columns().stream().skip(1).map(Column::of).toList();
    List<String[]> rows = run.rows();
    List<String> wrong = new ArrayList<>();
    Replay replay = new Replay(run);
    int[] seen = {0};
    replay.play(plant -> compare(plant, columns, rows.get(seen[0]++), wrong));
    assertThat(seen[0]).isEqualTo(rows.size());
    assertThat(wrong.stream().limit(20)).isEmpty();
    events(run, replay);
  }

  private static void compare(Plant plant, List<Column> columns, String[] row, List<String> wrong) {
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      double expected = Double.parseDouble(row[i + 1]);
      double found = column.read(plant);
      if (!(Math.abs(found - expected) <= column.allows(expected))) {
        wrong.add(row[0] + " s: " + column.name() + " is " + found + ", not " + expected);
      }
    }
  }

  private static void events(Trajectory run, Replay replay) {
    List<String[]> expected = run.events();
    List<String[]> found = replay.log.events;
    assertThat(found.stream().map(e -> e[1])).isEqualTo(expected.stream().map(e -> e[1]).toList());
    for (int i = 0; i < expected.size(); i++) {
      double gap = Double.parseDouble(found.get(i)[0]) - Double.parseDouble(expected.get(i)[0]);
      assertThat(Math.abs(gap)).as(expected.get(i)[1]).isLessThanOrEqualTo(SAME_TICK_S);
    }
  }
}
