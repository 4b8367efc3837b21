package handwheel.logbook;

import org.jspecify.annotations.Nullable;

/**
 * How a record is closed, as far as its chain holds.
 *
 * @param end the end line
 * @param endH its {@code h}
 * @param signed the signature line, if its signature is right
 */
record Closing(@Nullable End end, @Nullable String endH, @Nullable Signed signed) {
  static final Closing NONE = new Closing(null, null, null);

  Closing with(Signed signature) {
    return new Closing(end, endH, signature);
  }
}
