package handwheel.reader;

import java.util.Optional;

/**
 * Reads one piece of a file.
 *
 * @param <T> what comes of it
 */
@FunctionalInterface
interface NodeReader<T> {
  /** Returns what the node says; if that cannot be told, a finding is added and empty returned. */
  Optional<T> read(YamlNode node, Findings findings);
}
