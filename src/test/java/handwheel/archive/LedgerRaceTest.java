package handwheel.archive;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.LedgerBook;
import handwheel.logbook.LedgerRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LedgerRaceTest {
  private static final int EACH = 40;

  @TempDir Path folder;

  @Test
  void twoProgramsNeverGetOneNumber() throws Exception {
    List<Integer> numbers = new ArrayList<>();
    Path gate = folder.resolve("gate");
    try (Child one = taker(gate);
        Child two = taker(gate)) {
      assertThat(one.lines(1)).containsExactly("ready");
      assertThat(two.lines(1)).containsExactly("ready");
      Files.createFile(gate);
      for (Child child : List.of(one, two)) {
        child.lines(Integer.MAX_VALUE).forEach(l -> numbers.add(Integer.valueOf(l)));
        assertThat(child.await()).isZero();
      }
    }
    checkAll(numbers);
  }

  private Child taker(Path gate) throws IOException {
    return Child.start(NumberTaker.class, folder.toString(), "" + EACH, gate.toString());
  }

  @Test
  void twoThreadsNeverGetOneNumber() throws Exception {
    ConcurrentLinkedQueue<Integer> numbers = new ConcurrentLinkedQueue<>();
    List<Thread> threads =
        IntStream.range(0, 2).mapToObj(i -> new Thread(() -> takeAll(numbers))).toList();
    threads.forEach(Thread::start);
    for (Thread thread : threads) {
      thread.join();
    }
    checkAll(List.copyOf(numbers));
  }

  private void takeAll(ConcurrentLinkedQueue<Integer> numbers) {
    Ledger ledger = new Ledger(folder);
    for (int i = 0; i < EACH; i++) {
      int no = ledger.start("steam-leak", i).no();
      numbers.add(no);
      ledger.finish(no, LedgerTest.digest(no), LedgerTest.END);
    }
  }

  private void checkAll(List<Integer> numbers) throws Exception {
    Integer[] all = IntStream.rangeClosed(1, 2 * EACH).boxed().toArray(Integer[]::new);
    assertThat(numbers).containsExactlyInAnyOrder(all);
    LedgerBook book = new Ledger(folder).read();
    assertThat(book.problems()).isEmpty();
    assertThat(book.runs()).extracting(LedgerRun::no).containsExactly(all);
    assertThat(book.runs()).allMatch(r -> r.digest().equals(LedgerTest.digest(r.no())));
  }
}
