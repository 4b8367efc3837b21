package handwheel.app;

import static java.nio.file.StandardOpenOption.APPEND;
import static java.nio.file.StandardOpenOption.CREATE;
import static org.assertj.core.api.Assertions.assertThat;

import handwheel.debrief.Scored;
import handwheel.debrief.Scripts;
import handwheel.drill.Input;
import handwheel.drill.Mode;
import handwheel.drill.Player;
import handwheel.drill.Rehearsal;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Who slips less scores more. Twenty trainees, four of each of five levels, run each drill ten
 * times, everybody with the same ten draws and with slips of his own; their mean scores rank as
 * their levels do. The levels are own figures, set by slips before any score was seen. With ties as
 * they are here (four trainees a level) no ranking can come much above 0.98. What single runs say
 * of a level is published beside it and not held, for one run says little.
 */
final class SkillTest {
  private static final boolean IS_SOAK = Boolean.getBoolean("soak");
  private static final int TRAINEES_A_LEVEL = 4;
  private static final int RUNS = 10;
  private static final double LEAST = 0.95;

  /** A line for each drill, for whoever wants the figures and not the verdict. */
  private static final Path REPORT = Path.of("target", "skill.txt");

  /** From the worst to the best. */
  private static final List<Trainee.Skill> LEVELS =
      List.of(
          new Trainee.Skill(0.4, 20, 0.6, 0.4),
          new Trainee.Skill(0.2, 10, 0.4, 0.2),
          new Trainee.Skill(0.1, 5, 0.2, 0.1),
          new Trainee.Skill(0.05, 2, 0.1, 0.05),
          new Trainee.Skill(0, 0, 0, 0));

  /** What a seed draws of a script, and what a right run says then. */
  private record Draw(Rehearsal.Setup setup, List<Trainee.Due> right) {
    static Draw of(Scripts.Found script, long seed) {
      Scripts.Found found = script.played(seed, Mode.PRACTICE);
      Rehearsal.Setup setup =
          new Rehearsal.Setup(found.ship(), found.casualty(), seed, Mode.PRACTICE).unkept();
      return new Draw(setup, List.copyOf(SkillTest.right(found, setup)));
    }
  }

  /** One run and whose it was. */
  private record Run(int trainee, int level, Draw draw, long slips) {
    double score() {
      Trainee who = new Trainee(draw.right(), LEVELS.get(level), new Random(slips));
      return Scored.play(draw.setup(), who, e -> {}, s -> {}).sheet().points();
    }
  }

  static Stream<String> drills() {
    if (!System.getProperty("skill.only", "").isEmpty()) {
      return Stream.of(System.getProperty("skill.only"));
    }
    return IS_SOAK ? Shipped.DRILLS.scripts().stream() : Stream.of("low-water", "steam-leak");
  }

  @ParameterizedTest
  @MethodSource("drills")
  void ranksByScoreAsBySkill(String drill, TestReporter reporter) throws IOException, Usage {
    Scripts.Found found = Shipped.DRILLS.load(Shipped.DRILLS.file(drill)).found().orElseThrow();
    List<Draw> draws =
        IntStream.range(0, RUNS).parallel().mapToObj(i -> Draw.of(found, 1000L + i)).toList();
    int trainees = LEVELS.size() * TRAINEES_A_LEVEL;
    List<Run> runs =
        IntStream.range(0, trainees * RUNS)
            .mapToObj(
                i -> new Run(i / RUNS, i / RUNS % LEVELS.size(), draws.get(i % RUNS), 1000L + i))
            .toList();
    double[] scores = runs.parallelStream().mapToDouble(Run::score).toArray();
    double[] levels = runs.stream().mapToDouble(Run::level).toArray();
    double[] mean = new double[trainees];
    double[] level = new double[trainees];
    for (int i = 0; i < scores.length; i++) {
      mean[runs.get(i).trainee()] += scores[i] / RUNS;
      level[runs.get(i).trainee()] = levels[i];
    }
    double ofTrainees = Ranks.spearman(level, mean);
    String figures =
        String.format(
            Locale.ROOT,
            "%s: %s trainees, %s runs: Spearman %.3f (Kendall tau-b %.3f); over single runs %.3f",
            drill,
            trainees,
            scores.length,
            ofTrainees,
            Ranks.kendall(level, mean),
            Ranks.spearman(levels, scores));
    reporter.publishEntry("skill", figures);
    Files.writeString(REPORT, figures + "\n", CREATE, APPEND);
    assertThat(ofTrainees).as(figures).isGreaterThanOrEqualTo(LEAST);
  }

  /** What the witness says and when, with this seed. */
  private static List<Trainee.Due> right(Scripts.Found found, Rehearsal.Setup setup) {
    List<Trainee.Due> said = new ArrayList<>();
    Player witness = new WitnessPlayer(found.casualty(), found.ship());
    Player noted =
        new Player() {
          @Override
          public void note(Entry entry) {
            witness.note(entry);
          }

          @Override
          public List<Input> inputs(long now) {
            List<Input> inputs = witness.inputs(now);
            for (Input i : inputs) {
              if (i instanceof Input.Said s) {
                said.add(new Trainee.Due(now, s.order()));
              }
            }
            return inputs;
          }
        };
    Scored.play(setup, noted, e -> {}, s -> {});
    return said;
  }
}
