package handwheel.app;

import handwheel.archive.RecordFile;
import handwheel.debrief.Scripts;
import handwheel.logbook.Entry;
import handwheel.logbook.RecordText;
import handwheel.logbook.RunRecord;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Reads a record and, at the same time, the script its first lines name. */
final class RecordAndScript {
  /** The first two lines of a record fit into this. */
  private static final int HEAD_BYTES = 4096;

  private final Scripts known;

  /** Makes it of scripts that are remembered once they were read. */
  RecordAndScript(KnownScripts known) {
    this.known = known;
  }

  RunRecord read(Path path) {
    List<Supplier<Optional<RunRecord>>> both =
        List.of(() -> Optional.of(RecordFile.read(path)), () -> warmed(path));
    return new Cores().all(both).get(0).orElseThrow();
  }

  /** What these bytes say is not relied upon: whoever needs the script asks for it again. */
  private Optional<RunRecord> warmed(Path path) {
    try (InputStream in = Files.newInputStream(path)) {
      RecordText.read(in.readNBytes(HEAD_BYTES)).entries().stream()
          .limit(1)
          .filter(Entry.Run.class::isInstance)
          .map(Entry.Run.class::cast)
          .forEach(known::find);
    } catch (IOException e) {
      // Whoever reads the whole record tells why it cannot be read.
      return Optional.empty();
    }
    return Optional.empty();
  }
}
