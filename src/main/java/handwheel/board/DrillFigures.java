package handwheel.board;

import handwheel.casualty.Casualty;
import handwheel.casualty.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * Figures of one drill over many runs. Runs of another script, ship or engine are never pooled;
 * first attempts and repeats stand apart; only scored, finished runs are taken.
 */
public final class DrillFigures {
  private final List<Step> steps;
  private final int passPoints;
  private final Predicate<RunRow> mayBeNamed;

  /**
   * Makes figures for a drill.
   *
   * @param casualty its script
   * @param mayBeNamed whether a run's closeness to the cut may be told to whoever asks
   */
  public DrillFigures(Casualty casualty, Predicate<RunRow> mayBeNamed) {
    this.mayBeNamed = mayBeNamed;
    this.steps = casualty.response();
    this.passPoints = casualty.passPoints();
  }

  /**
   * Works the figures out.
   *
   * @param rows runs of this drill in the order of their start
   * @return for each version, first and repeat attempts: pass rate, reliability, steps
   */
  public List<Section> sections(List<RunRow> rows) {
    List<Section> all = new ArrayList<>();
    for (Map.Entry<String, List<RunRow>> group : groups(rows).entrySet()) {
      all.add(whole(group.getKey(), group.getValue()));
      all.add(items(group.getKey(), group.getValue()));
    }
    return all;
  }

  private static Map<String, List<RunRow>> groups(List<RunRow> rows) {
    Map<String, List<RunRow>> groups = new LinkedHashMap<>();
    Map<String, Integer> attempts = new TreeMap<>();
    for (RunRow r : rows) {
      int attempt = attempts.merge(r.about().trainee(), 1, Integer::sum);
      if (r.standing().equals("finished") && r.run().isScored()) {
        String which = attempt == 1 ? "first attempts" : "repeat attempts";
        groups.computeIfAbsent(which + ", " + version(r), k -> new ArrayList<>()).add(r);
      }
    }
    return groups;
  }

  private static String version(RunRow r) {
    return "engine "
        + r.run().engine()
        + ", ship "
        + r.run().shipSha().substring(0, 6)
        + ", script "
        + r.run().scriptSha().substring(0, 6);
  }

  private Section whole(String title, List<RunRow> rows) {
    int passed = (int) rows.stream().filter(r -> r.score().verdict().equals("pass")).count();
    List<List<String>> table = new ArrayList<>();
    table.add(List.of("runs", String.valueOf(rows.size())));
    table.add(List.of("passed, 95 % interval", Interval.wilson(passed, rows.size()).text()));
    Enough enough = Enough.of(rows.size());
    if (enough != Enough.NO) {
      ItemFigures figures = figures(rows);
      table.add(List.of("reliability KR-20", figures.kr20().text(2)));
      Figure error = pointsError(rows, figures);
      table.add(List.of("standard error, points", error.text(1)));
      table.add(List.of("near the cut of " + passPoints, band(rows, error)));
    }
    return new Section(title, List.of("figure", "value"), table, enough.words());
  }

  /** The standard error in points: their standard deviation times the root of what KR-20 leaves. */
  private static Figure pointsError(List<RunRow> rows, ItemFigures figures) {
    if (figures.kr20().value().isEmpty()) {
      return figures.kr20();
    }
    double mean = rows.stream().mapToInt(r -> r.score().points()).sum() / (double) rows.size();
    double squares = 0;
    for (RunRow r : rows) {
      squares += (r.score().points() - mean) * (r.score().points() - mean);
    }
    double left = Math.max(0, 1 - figures.kr20().value().getAsDouble());
    return Figure.of(StrictMath.sqrt(squares / rows.size() * left));
  }

  private String band(List<RunRow> rows, Figure error) {
    if (error.value().isEmpty()) {
      return error.text(0);
    }
    double half = error.value().getAsDouble();
    List<String> inside =
        rows.stream()
            .filter(r -> Math.abs(r.score().points() - passPoints) <= half)
            .filter(mayBeNamed)
            .map(CandidatePage::number)
            .toList();
    return inside.isEmpty()
        ? "none that you have marked within one standard error"
        : "look at these by hand: " + String.join(", ", inside);
  }

  private Section items(String title, List<RunRow> rows) {
    Enough enough = Enough.of(rows.size());
    ItemFigures figures = figures(rows);
    List<List<String>> table = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      table.add(
          List.of(
              steps.get(i).id(),
              figures.difficulty(i).text(),
              enough == Enough.NO ? "-" : discrimination(figures.discrimination(i))));
    }
    return new Section(
        "Steps: " + title,
        List.of("step", "earned in full", "correlation with the rest"),
        table,
        enough.words());
  }

  private static String discrimination(Figure figure) {
    if (figure.value().isEmpty()) {
      return figure.text(2);
    }
    double r = figure.value().getAsDouble();
    String word = r < 0 ? " look at the step and its key" : "";
    return String.format(Locale.ROOT, "%.2f", r) + word;
  }

  private ItemFigures figures(List<RunRow> rows) {
    List<boolean[]> marks = new ArrayList<>();
    for (RunRow r : rows) {
      boolean[] row = new boolean[steps.size()];
      for (int i = 0; i < row.length; i++) {
        String id = steps.get(i).id();
        row[i] = r.score().lost().stream().noneMatch(l -> l.step().equals(id));
      }
      marks.add(row);
    }
    return new ItemFigures(marks);
  }
}
