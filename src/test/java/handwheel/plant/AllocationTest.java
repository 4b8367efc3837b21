package handwheel.plant;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A tick makes no garbage, lit or not: 10,000 ticks allocate less than one object each tenth. */
class AllocationTest {
  @ParameterizedTest
  @ValueSource(strings = {"100", "50", "furnace-hot"})
  void nothingIsAllocatedInATick(String start) {
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    Plant plant = Starts.plant(start);
    plant.set(Port.LEAK_MAIN_RUN, 5.067e-4);
    Run.ticks(plant, 200);
    long before = threads.getCurrentThreadAllocatedBytes();
    Run.ticks(plant, 10_000);
    assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(16_000);
  }
}
