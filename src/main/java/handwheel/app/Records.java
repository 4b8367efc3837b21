package handwheel.app;

import handwheel.archive.Ledger;
import handwheel.archive.Numbering;
import handwheel.archive.RecordFile;
import handwheel.drill.Rehearsal;
import handwheel.logbook.About;
import handwheel.logbook.Entry;
import handwheel.logbook.EntrySink;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** The record of one run in a folder: numbered, written, closed, noted in the ledger. */
final class Records implements EntrySink, AutoCloseable {
  private final Ledger ledger;
  private final Numbering numbering;
  private final RecordFile file;
  private Optional<String> ended = Optional.empty();

  private Records(Ledger ledger, Numbering numbering, RecordFile file) {
    this.ledger = ledger;
    this.numbering = numbering;
    this.file = file;
  }

  /** Begins a record. */
  static Records begin(Path folder, Rehearsal.Setup setup, String trainee) {
    Ledger ledger = new Ledger(folder);
    Numbering numbering = ledger.start(setup.casualty().id(), setup.seed());
    String started = Instant.now().truncatedTo(ChronoUnit.SECONDS).toString();
    About about = new About(numbering.no(), numbering.before(), trainee, started, trainee, "");
    return new Records(
        ledger, numbering, RecordFile.create(folder.resolve(numbering.file()), about));
  }

  /** Returns the folder of the user's records. */
  static Path usualFolder() {
    String data = System.getenv("XDG_DATA_HOME");
    Path home = Path.of(System.getProperty("user.home"));
    Path base = data == null || data.isEmpty() ? home.resolve(".local/share") : Path.of(data);
    return base.resolve("handwheel").resolve("records");
  }

  @Override
  public void accept(Entry entry) {
    if (entry instanceof Entry.Ended e) {
      ended = Optional.of(e.why());
    }
    file.accept(entry);
  }

  /** Closes the record after the score; a run that was ended early says why it was. */
  void end(String why) {
    file.end(ended.orElse(why));
    file.close();
    file.digest().ifPresent(d -> ledger.finish(numbering.no(), d));
  }

  Optional<String> digest() {
    return file.digest();
  }

  Optional<String> trouble() {
    return numbering.trouble().or(file::trouble);
  }

  Path path() {
    return file.path();
  }

  @Override
  public void close() {
    file.close();
  }
}
