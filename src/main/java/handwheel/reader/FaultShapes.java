package handwheel.reader;

import handwheel.casualty.Amount;
import handwheel.casualty.Course;
import handwheel.casualty.Fault;
import handwheel.plant.Port;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What all faults of a script have in common. */
final class FaultShapes {
  static final String AFTER = "after";
  static final String RAMP = "ramp";
  static final String FOR = "for";

  /** The ramp of most faults. */
  static final Optional<Key> MAY_RAMP =
      Optional.of(Key.may(RAMP, Form.AMOUNT, "how long it takes to its full size"));

  private FaultShapes() {}

  /** Returns the mapping of a fault: its word, its id, its own keys, its course. */
  static Shape shape(String what, String word, List<Key> own, Optional<Key> ramp) {
    List<Key> keys = new ArrayList<>();
    keys.add(Key.must("fault", Form.WORD, "`" + word + "`").with(List.of(word)));
    keys.add(Key.must("id", Form.ID, "its id"));
    keys.addAll(own);
    keys.add(Key.may(AFTER, Form.AMOUNT, "how long after the phase begins it sets in"));
    ramp.ifPresent(keys::add);
    keys.add(Key.may(FOR, Form.AMOUNT, "after which time it goes by itself"));
    return new Shape(what, keys);
  }

  /** Returns the bore of the widest hole that a port takes, m. */
  static double widestM(Port port) {
    return 2 * StrictMath.sqrt(port.max() / StrictMath.PI);
  }

  static Fault.Aim plain(Port port, double at) {
    return new Fault.Aim(port, new Amount.Fixed(at), Fault.Scale.PLAIN);
  }

  /** Reads when a fault sets in and how. */
  static Optional<Course> course(MapNode map, Shape shape, AmountReader amounts) {
    NodeReader<Amount> time = amounts.time(0);
    Optional<Amount> after = orZero(map, AFTER, time);
    boolean hasRamp = shape.key(RAMP).isPresent();
    Optional<Amount> ramp = hasRamp ? orZero(map, RAMP, time) : Optional.of(new Amount.Fixed(0));
    Optional<Amount> lasts = map.get(FOR, amounts.time(1));
    boolean isLost = map.has(FOR) && lasts.isEmpty();
    return All.there(after, ramp) && !isLost
        ? Optional.of(new Course(after.orElseThrow(), ramp.orElseThrow(), lasts))
        : Optional.empty();
  }

  private static Optional<Amount> orZero(MapNode map, String key, NodeReader<Amount> time) {
    return map.has(key) ? map.get(key, time) : Optional.of(new Amount.Fixed(0));
  }
}
