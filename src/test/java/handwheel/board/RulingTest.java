package handwheel.board;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.Minute;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who may decide what, and what stands against it. */
class RulingTest {
  private static final String TODAY = "2031-03-01";
  private static final String KEY = "cd".repeat(32);
  private static final RunRow RUN = RunIndexTest.row(1, "P-0001", "steam-leak", "pass");

  private final List<Minute> minutes = new ArrayList<>();

  private List<String> objections(Ruling ruling) {
    return ruling.objections(new Candidate("P-0001", List.of(RUN), minutes), TODAY);
  }

  private static Ruling by(String who) {
    return new Ruling("steam-leak", "qualified", "2032-01-01", "Sound in all acts.", who, KEY);
  }

  private static Minute minute(String kind, String by, String of, String... facts) {
    List<Minute.Fact> all = new ArrayList<>();
    for (int i = 0; i < facts.length; i += 2) {
      all.add(new Minute.Fact(facts[i], facts[i + 1]));
    }
    return new Minute(kind, "2031-02-01T00:00:00Z", by, KEY, of, all, "");
  }

  private void name(String who, String scope, String until) {
    minutes.add(minute("named", "P-0100", who, "key", KEY, "scope", scope, "until", until));
  }

  private void mark(String who) {
    minutes.add(minute("marked", who, RUN.root(), "verdict", "pass"));
  }

  @Test
  void aNamedQualifierDecidesOnAMarkedRun() {
    name("P-0050", "steam-leak", "2031-12-31");
    mark("P-0050");
    assertThat(objections(by("P-0050"))).isEmpty();
  }

  @Test
  void whoIsNotNamedOrNoLongerOrForAnotherDrillDoesNot() {
    mark("P-0050");
    assertThat(objections(by("P-0050"))).singleElement().asString().contains("names P-0050");
    name("P-0050", "steam-leak", "2031-02-28");
    assertThat(objections(by("P-0050"))).hasSize(1);
    name("P-0051", "low-water", "2031-12-31");
    assertThat(objections(by("P-0051"))).hasSize(1);
    minutes.add(
        minute("named", "P-0052", "P-0052", "key", KEY, "scope", "any", "until", "2031-12-31"));
    assertThat(objections(by("P-0052"))).hasSize(1);
  }

  @Test
  void theTrainerAloneAndTheCandidateDoNot() {
    name("P-9999", "any", "2031-12-31");
    mark("P-9999");
    assertThat(objections(by("P-9999"))).singleElement().asString().contains("trained him alone");
    name("P-0001", "any", "2031-12-31");
    assertThat(objections(by("P-0001"))).singleElement().asString().contains("himself");
  }

  @Test
  void aMarkAfterTheScoreWasShownIsNone() {
    name("P-0050", "any", "2031-12-31");
    minutes.add(minute("shown", "P-0050", RUN.root()));
    mark("P-0050");
    assertThat(objections(by("P-0050"))).singleElement().asString().contains("No assessor marked");
    assertThat(Marks.mayShow(minutes, RUN, "P-0050")).isFalse();
  }

  @Test
  void aSelfRunNeverCountsAndADecisionNeedsWordsAndADay() {
    name("P-0050", "any", "2031-12-31");
    var a = RUN.about();
    var own =
        new handwheel.logbook.About(
            a.no(), a.before(), a.trainee(), a.started(), a.keyed(), a.trainee(), a.key());
    RunRow self =
        new RunRow(RUN.path(), own, RUN.run(), RUN.score(), RUN.root(), "finished", "", true);
    assertThat(self.whyNot()).isEqualTo("self-run");
    Candidate candidate = new Candidate("P-0001", List.of(self), minutes);
    assertThat(by("P-0050").objections(candidate, TODAY))
        .singleElement()
        .asString()
        .contains("counts");
    Ruling bare = new Ruling("steam-leak", "perhaps", "", "ok", "P-0050", KEY);
    assertThat(bare.objections(candidate, TODAY)).hasSize(2);
    Ruling again = new Ruling("steam-leak", "again", "", "Stop before fires out.", "P-0050", KEY);
    assertThat(again.objections(candidate, TODAY)).isEmpty();
  }

  @Test
  void attemptsAndExposureAreCounted() {
    RunRow second = RunIndexTest.row(29, "P-0001", "steam-leak", "fail");
    RunRow third = RunIndexTest.row(57, "P-0001", "steam-leak", "fail");
    Candidate candidate = new Candidate("P-0001", List.of(third, RUN, second), minutes);
    assertThat(candidate.attempt(candidate.runs().get(2))).isEqualTo(3);
    assertThat(candidate.exposure(candidate.runs().get(0))).isEqualTo("new to him");
    assertThat(candidate.exposure(candidate.runs().get(2)))
        .isEqualTo("drill met 2 before, this seed 0");
  }
}
