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
    return "RECORD|FOLDER... [--threads N] [--json]\n"
        + "      checks chain and signature of each record, simulates and scores it again, and\n"
        + "      holds it against the ledger beside it; offline";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    Arguments args = Arguments.of(words, List.of("--threads"), List.of("--json"));
    List<String> names = args.rest();
    if (names.isEmpty()) {
      throw new Usage("at least one record is needed.");
    }
    int threads =
        Math.toIntExact(args.number("--threads", Runtime.getRuntime().availableProcessors()));
    List<Path> records = RecordFolder.records(names);
    SortedMap<Path, LedgerComparison> ledgers = RecordFolder.ledgers(names, records);
    VerifyReport report = args.has("--json") ? new VerifyJson() : new VerifyLines(console);
    verify(records, ledgers, Math.max(1, threads), report);
    for (String name : names) {
      if (Files.isDirectory(Path.of(name))) {
        books(Path.of(name), ledgers, report);
      }
    }
    return report.end(console) ? Exit.YES : Exit.NO;
  }

  private void verify(
      List<Path> records, Map<Path, LedgerComparison> ledgers, int threads, VerifyReport report) {
    KnownScripts scripts = new KnownScripts(drills);
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<VerifyReport.Row>> results = new ArrayList<>();
      for (Path record : records) {
        results.add(pool.submit(() -> one(record, ledgers, scripts)));
      }
      for (Future<VerifyReport.Row> result : results) {
        report.record(result.get());
      }
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } finally {
      pool.shutdownNow();
    }
  }

  private static VerifyReport.Row one(
      Path path, Map<Path, LedgerComparison> ledgers, KnownScripts scripts) {
    RunRecord record = RecordFile.read(path);
    Verification verification = Verification.of(record, scripts);
    List<Trouble> troubles = new ArrayList<>(verification.found());
    LedgerComparison ledger = ledgers.get(RecordFolder.folderOf(path));
    if (ledger != null) {
      troubles.addAll(ledger.of(String.valueOf(path.getFileName()), record));
    }
    String key = record.signed().isPresent() ? record.about().orElseThrow().key() : "";
    return new VerifyReport.Row(
        path.toString(), troubles, key, ledger != null, record.digest().orElse(""));
  }

  /** Ledger and minutes of every folder below one that was named. */
  private static void books(
      Path folder, SortedMap<Path, LedgerComparison> ledgers, VerifyReport report)
      throws IOException {
    for (Map.Entry<Path, LedgerComparison> e : ledgers.entrySet()) {
      if (e.getKey().startsWith(folder)) {
        for (Trouble t : e.getValue().itself(RecordFolder.fileNames(e.getKey()))) {
          report.book(e.getKey().resolve("ledger").toString(), "ledger", t.text());
        }
        for (Problem p : new Minutes(e.getKey()).read().problems()) {
          report.book(e.getKey().resolve(Minutes.FILE).toString(), "minutes", p.text());
        }
      }
    }
  }
}
