package handwheel.board;

import handwheel.logbook.Entry;
import java.util.ArrayList;
import java.util.List;

/** Lists of runs and of what they lost, for a spreadsheet. */
public final class Papers {
  private Papers() {}

  /**
   * Writes a line for each run.
   *
   * @param rows runs
   * @param viewer for whom: what he may not see yet is left empty
   * @return comma-separated values
   */
  public static String runs(List<RunRow> rows, Viewer viewer) {
    List<List<String>> table = new ArrayList<>();
    for (RunRow r : rows) {
      boolean maySee = viewer.maySee(r);
      table.add(
          List.of(
              String.valueOf(r.about().no()),
              r.root(),
              viewer.name().apply(r.about().trainee()),
              r.about().started(),
              r.run().script(),
              String.valueOf(r.run().seed()),
              r.run().mode(),
              r.run().engine(),
              r.run().shipSha(),
              r.run().scriptSha(),
              r.standing(),
              maySee ? String.valueOf(r.score().points()) : "",
              maySee ? r.score().verdict() : "",
              r.whyNot(),
              r.coached()));
    }
    return Csv.of(
        List.of(
            "no",
            "root",
            "trainee",
            "started",
            "drill",
            "seed",
            "mode",
            "engine",
            "ship_sha",
            "script_sha",
            "standing",
            "points",
            "verdict",
            "does_not_count",
            "help"),
        table);
  }

  /**
   * Writes a line for each lost point of each run.
   *
   * @param rows runs
   * @param viewer for whom: runs that he may not see yet are left out
   * @return comma-separated values
   */
  public static String items(List<RunRow> rows, Viewer viewer) {
    List<List<String>> table = new ArrayList<>();
    for (RunRow r : rows) {
      if (viewer.maySee(r)) {
        r.score().lost().forEach(l -> table.add(item(r, l)));
      }
    }
    return Csv.of(
        List.of("no", "root", "drill", "step", "type", "points", "tick", "basis", "why"), table);
  }

  private static List<String> item(RunRow r, Entry.Loss l) {
    return List.of(
        String.valueOf(r.about().no()),
        r.root(),
        r.run().script(),
        l.step(),
        l.type(),
        String.valueOf(l.points()),
        String.valueOf(l.tick()),
        l.basis(),
        l.why());
  }
}
