package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.debrief.Scored;
import handwheel.drill.Input;
import handwheel.drill.Player;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Who slips less scores more. The five levels are own figures, set by slips before any score was
 * seen. Held is the ranking of the levels by their mean scores; the correlation over single runs is
 * published beside it and not held, for one run says little of a level.
 */
class SkillTest {
  private static final int RUNS = Boolean.getBoolean("soak") ? 200 : 40;

  /** From the worst to the best. */
  private static final List<Trainee.Skill> LEVELS =
      List.of(
          new Trainee.Skill(0.4, 20, 0.6, 0.4),
          new Trainee.Skill(0.2, 10, 0.4, 0.2),
          new Trainee.Skill(0.1, 5, 0.2, 0.1),
          new Trainee.Skill(0.05, 2, 0.1, 0.05),
          new Trainee.Skill(0, 0, 0, 0));

  @Test
  void ranksByScoreAsBySkill(TestReporter reporter) {
    double[] level = new double[LEVELS.size() * RUNS];
    double[] score = new double[level.length];
    double[] means = new double[LEVELS.size()];
    for (int run = 0; run < RUNS; run++) {
      List<Trainee.Due> right = right(run);
      for (int l = 0; l < LEVELS.size(); l++) {
        Trainee trainee = new Trainee(right, LEVELS.get(l), new Random(1000L * run + l));
        int i = run * LEVELS.size() + l;
        level[i] = l;
        score[i] = Scored.play(Shipped.setup(run), trainee, e -> {}, s -> {}).sheet().points();
        means[l] += score[i] / RUNS;
      }
    }
    double ofLevels = Ranks.spearman(new double[] {0, 1, 2, 3, 4}, means);
    String figures =
        "levels %s, runs %s, means %s"
            .formatted(ofLevels, Ranks.spearman(level, score), Arrays.toString(means));
    reporter.publishEntry("Spearman", figures);
    assertThat(ofLevels).as(figures).isGreaterThan(0.999);
  }

  /** What the witness says and when, with this seed. */
  private static List<Trainee.Due> right(long seed) {
    List<Trainee.Due> said = new ArrayList<>();
    Player witness = new WitnessPlayer(Shipped.STEAM_LEAK.casualty(), Shipped.STEAM_LEAK.ship());
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
    Scored.play(Shipped.setup(seed), noted, e -> {}, s -> {});
    return said;
  }
}
