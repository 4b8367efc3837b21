package handwheel.app;

import handwheel.archive.Minutes;
import handwheel.archive.RecordFile;
import handwheel.debrief.LedgerComparison;
import handwheel.debrief.Trouble;
import handwheel.debrief.Verification;
import handwheel.logbook.Problem;
import handwheel.logbook.RunRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** {@code verify RECORD...}: chain, signature, ledger, simulation and score of records. */
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
    return "RECORD|FOLDER... [--threads N]\n"
        + "      checks chain and signature of each record, simulates and scores it again, and\n"
        + "      holds it against the ledger beside it; offline";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    Arguments args = Arguments.of(words, List.of("--threads"), List.of());
    List<String> names = args.rest();
    if (names.isEmpty()) {
      throw new Usage("at least one record is needed.");
    }
    int threads =
        Math.toIntExact(args.number("--threads", Runtime.getRuntime().availableProcessors()));
    List<Path> records = RecordFolder.records(names);
    SortedMap<Path, LedgerComparison> ledgers = RecordFolder.ledgers(names, records);
    int bad = verify(records, ledgers, Math.max(1, threads), console);
    boolean areWhole = true;
    for (String name : names) {
      if (Files.isDirectory(Path.of(name))) {
        areWhole &= ledgersHold(Path.of(name), ledgers, console);
      }
    }
    if (records.size() != 1) {
      console.result(records.size() + " records, " + bad + " do not hold");
    }
    return bad == 0 && areWhole ? Exit.YES : Exit.NO;
  }

  private record Result(String text, boolean holds) {}

  private int verify(
      List<Path> records, Map<Path, LedgerComparison> ledgers, int threads, Console console) {
    KnownScripts scripts = new KnownScripts(drills);
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Result>> results = new ArrayList<>();
      for (Path record : records) {
        results.add(pool.submit(() -> one(record, ledgers, scripts)));
      }
      int bad = 0;
      for (Future<Result> result : results) {
        Result r = result.get();
        console.result(r.text());
        bad += r.holds() ? 0 : 1;
      }
      return bad;
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } finally {
      pool.shutdownNow();
    }
  }

  private static Result one(Path path, Map<Path, LedgerComparison> ledgers, KnownScripts scripts) {
    RunRecord record = RecordFile.read(path);
    Verification verification = Verification.of(record, scripts);
    List<Trouble> troubles = new ArrayList<>(verification.found());
    LedgerComparison ledger = ledgers.get(RecordFolder.folderOf(path));
    if (ledger != null) {
      troubles.addAll(ledger.of(String.valueOf(path.getFileName()), record));
    }
    if (troubles.isEmpty()) {
      return new Result(path + ": holds, " + sealed(record, ledger != null), true);
    }
    StringBuilder text = new StringBuilder();
    for (Trouble t : troubles) {
      text.append(text.length() == 0 ? "" : "\n").append(path).append(": ");
      text.append(t.kind().word()).append(": ").append(t.text());
    }
    return new Result(text.toString(), false);
  }

  private static String sealed(RunRecord record, boolean hasLedger) {
    String signature =
        record.signed().isPresent()
            ? "signed by " + record.about().orElseThrow().key()
            : "unsigned";
    String ledger = hasLedger ? "" : ", no ledger beside it";
    return signature + ledger + ". Digest " + record.digest().orElse("");
  }

  private static boolean ledgersHold(
      Path folder, SortedMap<Path, LedgerComparison> ledgers, Console console) throws IOException {
    boolean holds = true;
    for (Map.Entry<Path, LedgerComparison> e : ledgers.entrySet()) {
      if (e.getKey().startsWith(folder)) {
        for (Trouble t : e.getValue().itself(RecordFolder.fileNames(e.getKey()))) {
          console.result(e.getKey().resolve("ledger") + ": ledger: " + t.text());
          holds = false;
        }
        for (Problem p : new Minutes(e.getKey()).read().problems()) {
          console.result(e.getKey().resolve(Minutes.FILE) + ": minutes: " + p.text());
          holds = false;
        }
      }
    }
    return holds;
  }
}
