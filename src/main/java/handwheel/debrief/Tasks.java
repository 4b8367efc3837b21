package handwheel.debrief;

import java.util.List;
import java.util.function.Supplier;

/** Does tasks that do not touch each other; how many at once is its own matter. */
public interface Tasks {
  /** One after the other. */
  Tasks ONE_BY_ONE =
      new Tasks() {
        @Override
        public <T> List<T> all(List<Supplier<T>> tasks) {
          return tasks.stream().map(Supplier::get).toList();
        }
      };

  /**
   * Does tasks.
   *
   * @param <T> what each gives
   * @param tasks what to do
   * @return what came of each, in the same order
   */
  <T> List<T> all(List<Supplier<T>> tasks);
}
