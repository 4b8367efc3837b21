package handwheel.logbook;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Walks along a chain. After a break it goes on from the {@code h} that stands there, so that one
 * break is one problem and not one for every line that follows.
 */
final class ChainCheck {
  private final ProblemList problems;
  private @Nullable String previous = Chain.START;

  ChainCheck(ProblemList problems) {
    this.problems = problems;
  }

  /** Takes the next line apart; empty if that cannot be done. */
  Optional<HashedLine> next(int number, byte[] line) {
    LineRead<HashedLine> read = HashedLine.of(line);
    read.trouble().ifPresent(t -> problems.add(number, t));
    Optional<HashedLine> hashed = read.value();
    hashed.ifPresent(h -> check(number, h));
    previous = hashed.map(HashedLine::h).orElse(null);
    return hashed;
  }

  /** Returns what the next line has to follow on; the start if that is lost. */
  String last() {
    return previous == null ? Chain.START : previous;
  }

  private void check(int number, HashedLine line) {
    if (previous != null && !line.followsOn(previous)) {
      problems.add(
          number,
          Problem.Kind.CHAIN_BROKEN,
          "the chain is broken here: this line was changed, or lines before it were changed, added"
              + " or taken away.");
    }
  }
}
