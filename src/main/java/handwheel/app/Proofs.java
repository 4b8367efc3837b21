package handwheel.app;

import handwheel.debrief.Scripts;
import handwheel.proof.ProofText;
import handwheel.proof.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The proofs of scripts, each a file beside its script. */
final class Proofs {
  private static final long LARGEST_BYTES = 10_000;

  private Proofs() {}

  static Path file(Path script) {
    String name = script.getFileName().toString().replaceFirst("\\.yaml$", "");
    return script.resolveSibling(name + ProofText.END);
  }

  static void write(Path script, Scripts.Found found, Verdict verdict) throws IOException {
    Files.writeString(file(script), ProofText.of(found.casualty(), found.ship(), verdict));
  }

  /** Says why a script has no valid proof; empty if it has one. */
  static Optional<String> lack(Path script, Scripts.Found found) throws IOException {
    Path file = file(script);
    String mend = " Run `check " + script + "` first.";
    if (!Files.isRegularFile(file) || Files.size(file) > LARGEST_BYTES) {
      return Optional.of("`" + script + "` has no proof (" + file.getFileName() + ")." + mend);
    }
    List<String> outdated =
        ProofText.outdated(Files.readString(file), found.casualty(), found.ship());
    return outdated.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "the proof of `"
                + script
                + "` was made for another "
                + String.join(" and another ", outdated)
                + "."
                + mend);
  }
}
