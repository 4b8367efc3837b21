package handwheel.archive;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A program that waits for a gate to open, then starts and finishes runs and prints their numbers.
 */
final class NumberTaker {
  private NumberTaker() {}

  public static void main(String[] args) throws InterruptedException {
    System.out.println("ready");
    while (!Files.exists(Path.of(args[2]))) {
      Thread.sleep(1);
    }
    Ledger ledger = new Ledger(Path.of(args[0]));
    for (int i = Integer.parseInt(args[1]); i > 0; i--) {
      Numbering numbering = ledger.start("steam-leak", i);
      numbering.trouble().ifPresent(System.err::println);
      System.out.println(numbering.no());
      ledger
          .finish(numbering.no(), LedgerTest.digest(numbering.no()), LedgerTest.END)
          .ifPresent(System.err::println);
    }
  }
}
