package handwheel.app;

import handwheel.diagnostics.NearestWords;
import handwheel.drill.Mode;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads the option {@code --mode}. */
final class Modes {
  private Modes() {}

  static Mode of(Arguments args, Mode otherwise) throws Usage {
    Optional<String> word = args.value("--mode");
    if (word.isEmpty()) {
      return otherwise;
    }
    Optional<Mode> mode = Mode.ofWord(word.get());
    if (mode.isEmpty()) {
      List<String> valid = Arrays.stream(Mode.values()).map(Mode::word).toList();
      throw new Usage(
          "`--mode " + word.get() + "`: no such mode. " + NearestWords.offer(word.get(), valid));
    }
    return mode.get();
  }
}
