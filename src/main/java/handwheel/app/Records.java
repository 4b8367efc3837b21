package handwheel.app;

import handwheel.archive.Ledger;
import handwheel.archive.Numbering;
import handwheel.archive.RecordFile;
import handwheel.drill.Rehearsal;
import handwheel.logbook.About;
import handwheel.logbook.Entry;
import handwheel.logbook.EntrySink;
import handwheel.logbook.Signer;
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
  private final Who who;

  private String ledgerTrouble = "";

  private Records(Ledger ledger, Numbering numbering, RecordFile file, Who who) {
    this.ledger = ledger;
    this.numbering = numbering;
    this.file = file;
    this.who = who;
  }

  /** Begins a record. */
  static Records begin(Path folder, Rehearsal.Setup setup, Who who) {
    Ledger ledger = new Ledger(folder);
    Numbering numbering = ledger.start(setup.casualty().id(), setup.seed());
    String started = Instant.now().truncatedTo(ChronoUnit.SECONDS).toString();
    RecordFile file =
        RecordFile.create(folder.resolve(numbering.file()), about(numbering, who, started));
    return new Records(ledger, numbering, file, who);
  }

  /** Begins the record of a run that nobody sits at, under a number that is given. */
  static Records beginForcedAtEnd(
      Path folder, Ledger ledger, Numbering numbering, Who who, String started) {
    RecordFile file =
        RecordFile.createForcedAtEnd(
            folder.resolve(numbering.file()), about(numbering, who, started));
    return new Records(ledger, numbering, file, who);
  }

  private static About about(Numbering numbering, Who who, String started) {
    return new About(
        numbering.no(),
        numbering.before(),
        who.trainee(),
        started,
        who.keyed(),
        who.attests(),
        who.signer().map(Signer::publicHex).orElse(""));
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
    file.end(ended.orElse(why), who.coached());
    who.signer().ifPresent(file::sign);
    file.close();
    if (file.trouble().isEmpty() && file.digest().isPresent() && file.endH().isPresent()) {
      ledgerTrouble =
          ledger.finish(numbering.no(), file.digest().get(), file.endH().get()).orElse("");
    }
  }

  Optional<String> digest() {
    return file.digest();
  }

  Optional<String> trouble() {
    return numbering.trouble().or(file::trouble).or(this::ledgerTrouble);
  }

  private Optional<String> ledgerTrouble() {
    return Optional.of(ledgerTrouble).filter(t -> !t.isEmpty());
  }

  /** Says where the record is and whether it is signed. */
  String told() {
    String sign = who.signer().isPresent() ? "Signed." : "Not signed; `--key NAME` signs one.";
    return "Record: " + file.path() + "\n" + sign;
  }

  Path path() {
    return file.path();
  }

  @Override
  public void close() {
    file.close();
  }
}
