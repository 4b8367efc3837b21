package handwheel.drill;

import handwheel.plant.Plant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;

/** A reference run played again, with the columns somebody wants to look at, tick by tick. */
final class Film {
  private static final int TICKS_PER_S = 20;

  private final List<Column> columns;
  private final List<double[]> frames = new ArrayList<>();
  private final List<String[]> events;

  private Film(String run, List<Column> columns) {
    this.columns = columns;
    Replay replay = new Replay(Trajectory.named(run));
    replay.play(
        new Replay.Onlooker() {
          @Override
          public void evaluated(Plant plant) {
            // A frame shows what the rules have left.
          }

          @Override
          public void ruled(Plant plant) {
            take(plant);
          }
        });
    events = replay.log.events;
  }

  static Film of(String run, String... columns) {
    return new Film(run, List.of(columns).stream().map(c -> Column.of(c + " [")).toList());
  }

  private void take(Plant plant) {
    double[] frame = new double[columns.size()];
    for (int i = 0; i < frame.length; i++) {
      frame[i] = columns.get(i).read(plant);
    }
    frames.add(frame);
  }

  private int index(String column) {
    return columns.stream().map(Column::name).toList().indexOf(column + " [");
  }

  double at(String column, double s) {
    return frames.get((int) Math.rint(s * TICKS_PER_S))[index(column)];
  }

  double change(String column, double s) {
    return at(column, s) - at(column, 0);
  }

  /** First moment, s, at which a column is so, from a moment on. */
  double when(String column, double fromS, DoublePredicate is) {
    int i = index(column);
    for (int tick = (int) Math.rint(fromS * TICKS_PER_S); tick < frames.size(); tick++) {
      if (is.test(frames.get(tick)[i])) {
        return (double) tick / TICKS_PER_S;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** First whole second at which a column is so: the list was read off rows a second apart. */
  double whenRow(String column, double fromS, DoublePredicate is) {
    int i = index(column);
    int tick = (int) Math.ceil(fromS) * TICKS_PER_S;
    while (tick < frames.size() && !is.test(frames.get(tick)[i])) {
      tick += TICKS_PER_S;
    }
    return tick < frames.size() ? (double) tick / TICKS_PER_S : Double.POSITIVE_INFINITY;
  }

  double lowest(String column) {
    int i = index(column);
    return frames.stream().mapToDouble(f -> f[i]).min().orElseThrow();
  }

  double highest(String column) {
    int i = index(column);
    return frames.stream().mapToDouble(f -> f[i]).max().orElseThrow();
  }

  double whenLowest(String column) {
    double low = lowest(column);
    return when(column, 0, x -> x == low);
  }

  double whenHighest(String column) {
    double high = highest(column);
    return when(column, 0, x -> x == high);
  }

  /** Moments, s, of every event whose words begin so. */
  List<Double> times(String words) {
    return events.stream()
        .filter(e -> e[1].startsWith(words))
        .map(e -> Double.valueOf(e[0]))
        .toList();
  }

  /** Every event whose words begin so. */
  List<String> told(String words) {
    return events.stream().map(e -> e[1]).filter(e -> e.startsWith(words)).toList();
  }
}
