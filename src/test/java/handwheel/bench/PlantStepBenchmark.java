package handwheel.bench;

import handwheel.plant.Plant;
import handwheel.plant.PlantEvents;
import handwheel.plant.Port;
import handwheel.plant.Quantity;
import handwheel.plant.Starts;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Cost of one tick of the plant: steady at full power, and with a steam leak. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
@State(Scope.Thread)
public class PlantStepBenchmark {
  private Plant steady = Starts.plant("100");
  private Plant leaking = Starts.plant("100");

  /** Starts every iteration from the same condition. */
  @Setup(Level.Iteration)
  public void start() {
    steady = Starts.plant("100");
    leaking = Starts.plant("100");
    leaking.set(Port.LEAK_MAIN_RUN, 5.067e-4);
  }

  /** One tick at full power. */
  @Benchmark
  public double steady() {
    return step(steady);
  }

  /** One tick with an inch of leak. */
  @Benchmark
  public double leaking() {
    return step(leaking);
  }

  private static double step(Plant plant) {
    plant.evaluate();
    plant.applyRules(PlantEvents.NONE);
    plant.advance();
    return plant.value(Quantity.DRUM_LEVEL);
  }
}
