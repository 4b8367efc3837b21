package handwheel.app;

import handwheel.casualty.Casualty;
import handwheel.debrief.Scripts;
import handwheel.diagnostics.Finding;
import handwheel.proof.ProofText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;

/** What the folder says of one script: whether it may be run as scored, and how long it takes. */
record Shelf(String name, Optional<Casualty> casualty, String state, OptionalInt parS) {
  private static final int MINUTE_S = 60;
  private static final String RELEASED = "released";

  /** Looks at a script, and at the proof beside it. */
  static Shelf of(Drills drills, String name) throws Usage, IOException {
    Path file = drills.file(name);
    Drills.Loaded loaded = drills.load(file);
    Optional<Scripts.Found> found = loaded.found();
    if (found.isEmpty() || loaded.findings().stream().anyMatch(Finding::stopsTheDrill)) {
      return new Shelf(name, Optional.empty(), "does not read", OptionalInt.empty());
    }
    Optional<Casualty> casualty = found.map(Scripts.Found::casualty);
    Path proof = Proofs.file(file);
    if (!Files.isRegularFile(proof)) {
      return new Shelf(name, casualty, "not proved", OptionalInt.empty());
    }
    boolean isProved = Proofs.lack(file, found.get()).isEmpty();
    OptionalInt parS = isProved ? ProofText.parS(Files.readString(proof)) : OptionalInt.empty();
    return new Shelf(name, casualty, isProved ? RELEASED : "proof outdated", parS);
  }

  boolean isReleased() {
    return state.equals(RELEASED);
  }

  /** Returns the family; scripts that do not read have none. */
  String family() {
    return casualty.map(Casualty::family).orElse("");
  }

  /** Returns the par time as a person reads it, such as {@code 3:52}; empty without a proof. */
  String par() {
    return parS.isEmpty()
        ? ""
        : parS.getAsInt() / MINUTE_S
            + ":"
            + Integer.toString(100 + parS.getAsInt() % MINUTE_S).substring(1);
  }
}
