package handwheel.app;

import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.logbook.EntrySink;
import java.nio.file.Path;
import java.util.Optional;

/** A record that is begun with the first entry: who leaves at the cautions has not run a drill. */
final class Late implements EntrySink, AutoCloseable {
  private final Path folder;
  private final Rehearsal.Setup setup;
  private final Who who;
  private Optional<Records> records = Optional.empty();

  Late(Path folder, Rehearsal.Setup setup, Who who) {
    this.folder = folder;
    this.setup = setup;
    this.who = who;
  }

  @Override
  public void accept(Entry entry) {
    if (records.isEmpty()) {
      records = Optional.of(Records.begin(folder, setup, who));
    }
    records.get().accept(entry);
  }

  void end() {
    records.ifPresent(r -> r.end("over"));
  }

  Optional<String> trouble() {
    return records.flatMap(Records::trouble);
  }

  Optional<String> told() {
    return records.map(Records::told);
  }

  @Override
  public void close() {
    records.ifPresent(Records::close);
  }
}
