package handwheel.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Reads a whole ledger. */
public final class LedgerText {
  private final ProblemList problems = new ProblemList();
  private final TreeMap<Integer, LedgerRun> runs = new TreeMap<>();

  private final List<LedgerLine.Noted> notes = new ArrayList<>();

  private LedgerText() {}

  /**
   * Reads a ledger.
   *
   * @param file the bytes of the file
   * @return what it says and what is wrong with it; never an exception
   */
  public static LedgerBook read(byte[] file) {
    return new LedgerText().read(FileLines.of(file));
  }

  private LedgerBook read(FileLines file) {
    ChainCheck chain = new ChainCheck(problems);
    for (int i = 0; i < file.whole().size(); i++) {
      int number = i + 1;
      chain.next(number, file.whole().get(i)).ifPresent(line -> take(number, line));
    }
    file.reportTorn(problems);
    return new LedgerBook(
        List.copyOf(runs.values()), chain.last(), file.tornBytes(), notes, problems.kept());
  }

  private void take(int number, HashedLine line) {
    LineRead<LedgerLine> read = LedgerLine.read(line.bare());
    read.trouble().ifPresent(t -> problems.add(number, t));
    read.value().ifPresent(l -> take(number, l));
  }

  private void take(int number, LedgerLine line) {
    if (line instanceof LedgerLine.Numbered numbered) {
      start(number, numbered);
    } else if (line instanceof LedgerLine.Finished finished) {
      finish(number, finished);
    } else if (line instanceof LedgerLine.Noted noted) {
      note(number, noted);
    }
  }

  private void start(int number, LedgerLine.Numbered line) {
    if (!runs.isEmpty() && line.no() <= runs.lastKey()) {
      disagrees(number, "run " + line.no() + " comes after run " + runs.lastKey() + ".");
    }
    String before = runs.isEmpty() ? Chain.START : runs.lastEntry().getValue().digest();
    if (!line.before().equals(before)) {
      disagrees(number, "run " + line.no() + " names another run before it than the one above.");
    }
    runs.putIfAbsent(
        line.no(), new LedgerRun(line.no(), line.file(), line.before(), Chain.START, Chain.START));
  }

  private void finish(int number, LedgerLine.Finished line) {
    LedgerRun run = runs.get(line.no());
    if (run == null) {
      disagrees(number, "run " + line.no() + " is finished but was never numbered.");
    } else if (run.isFinished()) {
      disagrees(number, "run " + line.no() + " is finished twice.");
    } else {
      runs.put(
          run.no(), new LedgerRun(run.no(), run.file(), run.before(), line.digest(), line.end()));
    }
  }

  private void note(int number, LedgerLine.Noted line) {
    if (!runs.containsKey(line.no())) {
      disagrees(number, "a note is about run " + line.no() + ", which was never numbered.");
    }
    notes.add(line);
  }

  private void disagrees(int number, String message) {
    problems.add(number, Problem.Kind.LEDGER_DISAGREES, message);
  }
}
