package handwheel.app;

import handwheel.archive.KeyFile;
import handwheel.archive.Minutes;
import handwheel.archive.NameTable;
import handwheel.logbook.Minute;
import handwheel.logbook.Signer;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Who sits at the board, and signs what he does there. */
final class Seat {
  private final Minutes minutes;
  private final NameTable names;
  private final Path keys;
  private final Optional<String> me;

  Seat(Path folder, Path keys, Optional<String> me) {
    this.minutes = new Minutes(folder);
    this.names = new NameTable(folder);
    this.keys = keys;
    this.me = me;
  }

  /** Returns his pseudonym; empty if he did not say who he is. */
  String id() throws IOException {
    return me.isPresent() ? names.pseudonym(me.get()) : "";
  }

  /**
   * Returns his key.
   *
   * @throws Usage if he did not say who he is, or has none
   */
  Signer signer() throws Usage {
    if (me.isEmpty()) {
      throw new Usage("say who you are: `board --me NAME`. What you do here is signed.");
    }
    try {
      return KeyFile.read(keys, me.get()).signer();
    } catch (IOException e) {
      throw new Usage(e.getMessage() + ".");
    }
  }

  /** Signs and appends a minute; the words are name, text, name, text. */
  void write(String kind, String of, String... facts) throws Usage, IOException {
    List<Minute.Fact> all = new ArrayList<>();
    for (int i = 0; i + 1 < facts.length; i += 2) {
      all.add(new Minute.Fact(facts[i], facts[i + 1]));
    }
    String at = Instant.now().truncatedTo(ChronoUnit.SECONDS).toString();
    Signer signer = signer();
    minutes.append(new Minute(kind, at, id(), signer.publicHex(), of, all, ""), signer);
  }

  /** Returns today's date in UTC. */
  static String today() {
    return Instant.now().toString().substring(0, 10);
  }
}
