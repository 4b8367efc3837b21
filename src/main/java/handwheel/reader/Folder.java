package handwheel.reader;

import handwheel.diagnostics.SourceSpot;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** The folder of a ship, which remembers what was read from it. */
final class Folder {
  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,50}\\.yaml");

  private final ShipFiles files;
  private final TreeMap<String, byte[]> taken = new TreeMap<>();

  Folder(ShipFiles files) {
    this.files = files;
  }

  /** Composes the ship file itself. */
  Optional<YamlNode> ship(Findings findings) {
    return compose(ShipFiles.SHIP, SourceSpot.wholeFile(files.shown(ShipFiles.SHIP)), findings);
  }

  /** Composes the file whose name a node gives. */
  Optional<YamlNode> named(YamlNode node, Findings findings) {
    return Scalars.scalar(node, "a file's name", findings)
        .filter(s -> isName(s, findings))
        .flatMap(s -> compose(s.text(), s.spot(), findings));
  }

  /** Returns the hash over all files taken, lower-case hex. */
  String sha256() {
    return Sha256.of(taken);
  }

  private Optional<YamlNode> compose(String name, SourceSpot from, Findings findings) {
    Optional<byte[]> bytes = files.read(name);
    bytes.ifPresent(b -> taken.put(name, b));
    if (bytes.isEmpty()) {
      findings.add(
          FindingId.MISSING_FILE,
          from,
          "there is no file " + Say.quoted(files.shown(name)),
          "Put the file into the ship's folder.");
    }
    return bytes.flatMap(b -> YamlText.compose(files.shown(name), b, findings));
  }

  private static boolean isName(YamlNode.Scalar scalar, Findings findings) {
    boolean isName = NAME.matcher(scalar.text()).matches();
    if (!isName) {
      findings.add(
          FindingId.BAD_FILE_NAME,
          scalar.spot(),
          Say.quoted(scalar.text()) + " is no name of a file in the ship's folder",
          "Lower-case letters, figures and hyphens, then `.yaml`; no folder before it.");
    }
    return isName;
  }
}
