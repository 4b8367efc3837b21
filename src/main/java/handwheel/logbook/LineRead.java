package handwheel.logbook;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What came of reading a line: either its value or what is wrong with it.
 *
 * @param <T> what the line says
 */
public final class LineRead<T> {
  private final @Nullable T value;
  private final @Nullable LineTrouble trouble;

  private LineRead(@Nullable T value, @Nullable LineTrouble trouble) {
    this.value = value;
    this.trouble = trouble;
  }

  static <T> LineRead<T> of(T value) {
    return new LineRead<>(value, null);
  }

  static <T> LineRead<T> trouble(int column, String message) {
    return new LineRead<>(null, new LineTrouble(column, message));
  }

  /**
   * Returns what the line says.
   *
   * @return the value, or empty if the line was not understood
   */
  public Optional<T> value() {
    return Optional.ofNullable(value);
  }

  /**
   * Returns what is wrong.
   *
   * @return the trouble, or empty if the line was understood
   */
  public Optional<LineTrouble> trouble() {
    return Optional.ofNullable(trouble);
  }
}
