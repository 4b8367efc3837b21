package handwheel.reader;

import handwheel.diagnostics.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What came of reading something.
 *
 * @param <T> what was to be read
 * @param value the model; there whenever every part of it could be read, even if there are findings
 * @param findings all that was found, by place
 */
public record Read<T>(Optional<T> value, List<Finding> findings) {
  /** Makes the outcome; the value counts only if no part was lost. */
  static <T> Read<T> of(Optional<T> value, Findings findings) {
    return new Read<>(value.filter(v -> findings.lost() == 0), findings.byPlace());
  }
}
