package handwheel.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Faults and orders drawn from a seed: ports of every kind, thrown over or turned slowly, half of
 * them to an end of their range. {@link SplittableRandom} is SplitMix64 (Steele, Lea, Flood, OOPSLA
 * 2014), so a seed draws the same everywhere.
 */
final class RandomMoves {
  private static final List<String> STARTS =
      List.of("25", "50", "100", "furnace-cold", "furnace-warm", "furnace-hot", "boiler-cold");
  private static final Port[] PORTS = Port.values();

  final String start;
  private final List<Move> moves = new ArrayList<>();

  /** One port on its way. */
  private record Move(Port port, int fromTick, int overTicks, double to) {
    void apply(Plant plant, int tick) {
      int left = fromTick + overTicks - tick;
      if (left <= 0) {
        plant.set(port, to);
      } else {
        double now = plant.position(port);
        plant.set(port, now + (to - now) / (left + 1));
      }
    }

    boolean isDue(int tick) {
      return tick >= fromTick && tick <= fromTick + overTicks;
    }

    String text() {
      return String.format(
          Locale.ROOT, "%s to %.4g at %.1f s", port.id(), to, fromTick * Plant.TICK_S);
    }
  }

  RandomMoves(long seed, int ticks) {
    SplittableRandom random = new SplittableRandom(seed);
    start = STARTS.get(random.nextInt(STARTS.size()));
    int count = 3 + random.nextInt(12);
    for (int i = 0; i < count; i++) {
      moves.add(move(random, ticks));
    }
  }

  private static Move move(SplittableRandom random, int ticks) {
    Port port = PORTS[random.nextInt(PORTS.length)];
    double share = random.nextBoolean() ? random.nextInt(2) : random.nextDouble();
    double to = port.min() + (port.max() - port.min()) * share;
    boolean isWhole = port.kind() == Port.Kind.SWITCH || port.kind() == Port.Kind.CHOICE;
    int over = isWhole || random.nextBoolean() ? 0 : random.nextInt(600);
    return new Move(port, random.nextInt(ticks), over, isWhole ? Math.rint(to) : to);
  }

  void apply(Plant plant, int tick) {
    for (Move move : moves) {
      if (move.isDue(tick)) {
        move.apply(plant, tick);
      }
    }
  }

  /** For who has to look after a failed run. */
  String text() {
    return start + ": " + moves.stream().map(Move::text).toList();
  }
}
