package handwheel.app;

import handwheel.debrief.Tasks;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Supplier;

/** Does tasks side by side, as many as the machine has cores; the order of results is fixed. */
final class Cores implements Tasks {
  @Override
  public <T> List<T> all(List<Supplier<T>> tasks) {
    ForkJoinPool pool = new ForkJoinPool(Runtime.getRuntime().availableProcessors());
    try {
      List<ForkJoinTask<T>> begun = tasks.stream().map(t -> pool.submit(t::get)).toList();
      return begun.stream().map(ForkJoinTask::join).toList();
    } finally {
      pool.shutdown();
    }
  }
}
