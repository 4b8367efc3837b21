package handwheel.app;

import handwheel.debrief.Trouble;

/** What verifying found, as lines for people. */
final class VerifyLines implements VerifyReport {
  private final Console console;
  private int records;
  private int bad;
  private boolean areBooksWhole = true;

  VerifyLines(Console console) {
    this.console = console;
  }

  @Override
  public void record(Row row) {
    records++;
    if (row.troubles().isEmpty()) {
      console.result(row.record() + ": holds, " + sealed(row));
      return;
    }
    bad++;
    for (Trouble t : row.troubles()) {
      console.result(row.record() + ": " + t.kind().word() + ": " + t.text());
    }
  }

  private static String sealed(Row row) {
    String signature = row.key().isEmpty() ? "unsigned" : "signed by " + row.key();
    String ledger = row.hasLedger() ? "" : ", no ledger beside it";
    return signature + ledger + ". Digest " + row.digest();
  }

  @Override
  public void book(String file, String kind, String text) {
    console.result(file + ": " + kind + ": " + text);
    areBooksWhole = false;
  }

  @Override
  public boolean end(Console to) {
    if (records != 1) {
      to.result(records + " records, " + bad + " do not hold");
    }
    return bad == 0 && areBooksWhole;
  }
}
