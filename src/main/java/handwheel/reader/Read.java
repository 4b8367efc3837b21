package handwheel.reader;

import handwheel.diagnostics.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What came of reading a file.
 *
 * @param <T> what is read
 * @param value what was read; empty if a part of it is missing
 * @param findings everything that is wrong, by place
 */
public record Read<T>(Optional<T> value, List<Finding> findings) {
  /**
   * Copies the list.
   *
   * @param value what was read; empty if a part of it is missing
   * @param findings everything that is wrong, by place
   */
  public Read {
    findings = List.copyOf(findings);
  }
}
