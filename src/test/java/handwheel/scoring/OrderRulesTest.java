package handwheel.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What counts as the wrong order, and how it is told. Own fixtures. */
final class OrderRulesTest {
  private static final Script CHAIN =
      new Script()
          .with(Script.shut("trip", "trip").points(15))
          .with(Script.proved("proved").points(10).after("trip", "O2"))
          .with(Script.shut("stop", "main-stop").points(20).after("proved", "O28"));

  private static Run run(long trip, long proof, long stop) {
    Run run = new Run().cue(0);
    for (long tick = 0; tick < 1000; tick += 10) {
      if (tick == trip) {
        run.shut(tick, "trip");
      }
      if (tick == proof) {
        run.read(tick, 2_000);
      }
      if (tick == stop) {
        run.shut(tick, "main-stop");
      }
    }
    return run.until(2_000);
  }

  @Test
  void theEarlyActIsBlamedAndTheRuleNamed() {
    ScoreSheet sheet = run(100, 300, 200).score(CHAIN);
    assertThat(sheet.charges())
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.step()).isEqualTo("stop");
              assertThat(c.type()).isEqualTo(ErrorClass.EARLY);
              assertThat(c.tick()).isEqualTo(200);
              assertThat(c.reading()).isEqualTo("stop 5 s before proved");
              assertThat(c.why())
                  .startsWith("Done before `proved`, which must come first (rule O28).");
            });
  }

  /** Leaving the proof out costs its 10 points, so reading it late must not cost 20. */
  @Test
  void itCostsNoMoreThanLeavingTheOtherActOut() {
    ScoreSheet late = run(100, 300, 200).score(CHAIN);
    ScoreSheet without = run(100, -1, 200).score(CHAIN);
    assertThat(late.points()).isEqualTo(90).isEqualTo(without.points());
    assertThat(late.charges().get(0).why()).contains("no more than leaving the acts out");
  }

  @Test
  void whatFollowsFromTwoRulesIsARuleToo() {
    Script ends =
        new Script()
            .with(Script.shut("trip", "trip").points(15))
            .with(Script.proved("proved").points(10).after("trip", "O2"))
            .with(Script.shut("stop", "main-stop").points(15).after("proved", "O28"));
    ScoreSheet sheet = run(200, -1, 100).score(ends);
    assertThat(sheet.charges()).extracting(Charge::step).containsExactly("proved", "stop");
    assertThat(sheet.charges().get(1).why())
        .startsWith("Done before `trip`, which must come first (rule O28, O2 by way of proved).");
  }

  @Test
  void anActAfterAnOmittedOneIsNotChargedForItsOrder() {
    ScoreSheet sheet = run(-1, 100, 200).score(CHAIN);
    assertThat(sheet.charges()).extracting(Charge::step).containsExactly("trip");
  }

  @Test
  void theSameInstantIsNoConflict() {
    assertThat(run(100, 100, 100).score(CHAIN).points()).isEqualTo(100);
  }

  private static ScoreSheet twoTrips(String rule, long superheater, long saturated) {
    Script script =
        new Script()
            .with(Script.shut("out-superheater", "quick-valve").points(15))
            .with(Script.shut("out-saturated", "trip").points(15).after("out-superheater", rule));
    Run run = new Run().cue(0);
    if (superheater < saturated) {
      run.shut(superheater, "quick-valve");
    }
    run.shut(saturated, "trip");
    if (superheater >= saturated) {
      run.shut(superheater, "quick-valve");
    }
    return run.until(2_000).score(script);
  }

  /** Superheater first is a preference when one hand works both. Common practice, no source. */
  @Test
  void nobodyLosesAPointOnSuperheaterFirstWithinThreeSeconds() {
    assertThat(twoTrips("O1", 160, 100).points()).isEqualTo(100);
    assertThat(twoTrips("O1", 161, 100).points()).isEqualTo(85);
    assertThat(twoTrips("O2", 101, 100).points()).isEqualTo(85);
    assertThat(twoTrips("O1", 100, 200).points()).isEqualTo(100);
  }

  /** What rests on the preference by way of other steps is no stricter than the preference. */
  @Test
  void thePreferenceStaysAPreferenceByWayOfOthers() {
    Script script =
        new Script()
            .with(Script.shut("out-superheater", "quick-valve").points(15))
            .with(Script.shut("out-saturated", "trip").points(15).after("out-superheater", "O1"))
            .with(Script.shut("stop", "main-stop").points(15).after("out-saturated", "O2"));
    Run run = new Run().cue(0);
    run.shut(100, "trip");
    run.shut(120, "main-stop");
    run.shut(150, "quick-valve");
    assertThat(run.score(script).points()).isEqualTo(100);
  }

  @Test
  void aRuleThatIsNotThereIsTheScriptsOrder() {
    Script script =
        new Script()
            .with(Script.shut("trip", "trip").points(15))
            .with(
                Script.shut("stop", "main-stop")
                    .points(15)
                    .after("trip", "")
                    .after("unknown", "O2"));
    assertThat(run(200, -1, 100).score(script).charges().get(0).why())
        .startsWith("Done before `trip`, which must come first (the script's order).");
  }

  /** A script whose steps wait for each other is refused by the reader; here it must not hang. */
  @Test
  void aCircleOfRulesIsScoredAllTheSame() {
    Script circle =
        new Script()
            .with(Script.shut("trip", "trip").points(15).after("stop", "O2"))
            .with(Script.shut("stop", "main-stop").points(15).after("trip", "O2"));
    assertThat(run(100, -1, 200).score(circle).points()).isEqualTo(85);
  }
}
