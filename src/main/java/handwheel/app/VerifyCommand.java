package handwheel.app;

import handwheel.archive.RecordFile;
import handwheel.debrief.Verification;
import handwheel.logbook.RunRecord;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** {@code verify RECORD...}: chain, simulation and score of records. */
final class VerifyCommand implements Command {
  private final Drills drills;

  VerifyCommand(Drills drills) {
    this.drills = drills;
  }

  @Override
  public String name() {
    return "verify";
  }

  @Override
  public String summary() {
    return "RECORD...\n      checks the chain of each record, simulates and scores it again; offline";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage {
    List<String> names = Arguments.of(words, List.of(), List.of()).rest();
    if (names.isEmpty()) {
      throw new Usage("at least one record is needed.");
    }
    boolean isAllWell = true;
    for (String name : names) {
      Path path = Path.of(name);
      if (!Files.isRegularFile(path)) {
        throw new Usage("there is no record `" + name + "`.");
      }
      isAllWell &= holds(path, console);
    }
    return isAllWell ? Exit.YES : Exit.NO;
  }

  private boolean holds(Path path, Console console) {
    RunRecord record = RecordFile.read(path);
    Verification verification = Verification.of(record, drills);
    if (verification.holds()) {
      console.result(path + ": holds. Digest " + record.digest().orElse(""));
    } else {
      verification.troubles().forEach(t -> console.result(path + ": " + t));
    }
    return verification.holds();
  }
}
