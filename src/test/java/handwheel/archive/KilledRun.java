package handwheel.archive;

import handwheel.logbook.Entry;
import handwheel.logbook.SampleRun;
import java.nio.file.Path;

/** A program that records a run without end and says each time an entry was taken. */
final class KilledRun {
  private KilledRun() {}

  public static void main(String[] args) {
    RecordFile file = RecordFile.create(Path.of(args[0]), SampleRun.ABOUT);
    file.accept(SampleRun.entries().get(0));
    System.out.println(0);
    for (long t = 1; ; t++) {
      file.accept(entry(t));
      System.out.println(t);
    }
  }

  static Entry entry(long t) {
    return new Entry.PlantEvent(t, "Event " + "x".repeat((int) (t % 200)));
  }
}
