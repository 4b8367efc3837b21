package handwheel.app;

import handwheel.diagnostics.Finding;
import handwheel.screen.Text;
import java.io.PrintStream;
import java.util.Collection;
import java.util.Optional;

/**
 * Where results and messages go.
 *
 * @param out results
 * @param err messages
 */
record Console(PrintStream out, PrintStream err) {
  void result(String text) {
    print(out, text);
  }

  void message(String text) {
    print(err, text);
  }

  private static void print(PrintStream to, String text) {
    for (String line : text.split("\n", -1)) {
      to.println(Text.harmless(line));
    }
  }

  /** Prints findings; returns whether one of them stops the drill. */
  boolean stops(Collection<Finding> findings) {
    Told.of(findings).forEach(this::message);
    return findings.stream().anyMatch(Finding::stopsTheDrill);
  }

  /** Prints a trouble, if there is one. */
  void trouble(Optional<String> trouble) {
    trouble.ifPresent(this::message);
  }
}
