package handwheel.logbook;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeMap;

/** A short run with every kind of entry in it, for the tests of this and other packages. */
public final class SampleRun {
  /** Who drilled. */
  public static final About ABOUT =
      new About(41, Chain.START, "T. Vale \"Té\"", "2031-02-03T08:15:00Z", "T. Vale", "", "");

  private SampleRun() {}

  /** Returns the entries from run to score. */
  public static List<Entry> entries() {
    TreeMap<String, Long> gauges = new TreeMap<>();
    gauges.put("drum-pressure", 59810L);
    gauges.put("drum-level", -12L);
    return List.of(
        new Entry.Run(1, "0.1.0", "alder-reach", "ab", "steam-leak", "cd", 7, "scored"),
        new Entry.Drawn("hole", 19_050_000),
        new Entry.CautionShown("jet"),
        new Entry.PhaseEntered(0, "steady"),
        new Entry.State(0, "00ff", gauges),
        new Entry.CueGiven(700, "roar", true),
        new Entry.Acknowledged(705),
        new Entry.OrderSaid(812, 790, 1, "checkman shut main-stop", 80, 7900, false),
        new Entry.Repeated(830, 1, "checkman", "checkman shut main-stop"),
        new Entry.Refused(840, 1, "checkman", "main-stop", "Too hot \uD83D\uDD25 there", true),
        new Entry.Stopped(850),
        new Entry.Resumed(850),
        new Entry.Began(860, 2, "remote-hand", "main-stop", "remote-station"),
        new Entry.Moved(900, 2, "remote-hand", "main-stop", "remote-station", 0),
        new Entry.Arrived(901, "checkman", "trunk"),
        new Entry.Reading(905, 3, "remote-hand", "burner-line-pressure", 4200),
        new Entry.Looked(906, 4, "messenger", "trunk", "Steam,\nno one\u2028there \\ yet"),
        new Entry.Passed(910, 5, "leak-report", "watch-engineer"),
        new Entry.Counted(920, 6, 6, 7, "checkman"),
        new Entry.Person(930, "checkman", "hurt", 300),
        new Entry.PlantEvent(940, "Safety valve lifts"),
        new Entry.Broke(950, 0, "stop-on-fire", "main-stop moved", -1),
        new Entry.Ended(960, "enough"),
        new Entry.Score(
            60,
            "fail",
            List.of(
                new Entry.Loss(20, "unsafe-act", "stop-on-fire", 950, "On fire.", "trade"),
                new Entry.Loss(20, "omission", "clear", 960, "Not said.", "model"))));
  }

  /** Returns the bytes of the finished record. */
  public static byte[] record() {
    return record(ABOUT, entries());
  }

  static byte[] record(About about, List<Entry> entries) {
    StringBuilder text = new StringBuilder();
    Chain alone = new Chain();
    text.append(alone.append(about.line())).append('\n');
    ChainedEntries chained = new ChainedEntries(line -> text.append(line).append('\n'));
    entries.forEach(chained::accept);
    chained.end(new End("over", "", alone.last()));
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
