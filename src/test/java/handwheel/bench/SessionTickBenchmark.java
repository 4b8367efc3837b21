package handwheel.bench;

import handwheel.casualty.Casualty;
import handwheel.drill.Mode;
import handwheel.drill.Session;
import handwheel.reader.ShippedFiles;
import handwheel.ship.Ship;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One tick of a whole session, plant and crew and record entries, in the shipped steam leak. */
@State(Scope.Thread)
@BenchmarkMode(org.openjdk.jmh.annotations.Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SessionTickBenchmark {
  private final Ship ship = ShippedFiles.ship().value().orElseThrow();
  private final Casualty casualty = ShippedFiles.steamLeak();
  private Session session = open();

  private Session open() {
    return Session.open(ship, casualty, 1, Mode.PRACTICE, entry -> {});
  }

  /**
   * Does one tick; a drill that is over is opened anew.
   *
   * @return whether a tick was done
   */
  @Benchmark
  public boolean tick() {
    if (session.isOver()) {
      session = open();
    }
    return session.tick();
  }
}
