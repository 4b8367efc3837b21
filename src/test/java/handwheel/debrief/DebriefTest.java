package handwheel.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.Entry;
import handwheel.scoring.Charge;
import handwheel.screen.SteamLeak;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a debrief of right and of wrong runs says. */
final class DebriefTest {
  private static final String EVIL = "<script>alert(1)</script> & \"x\" 'y' \u202E\u0007";

  private static final List<Debrief> WRONG =
      Runs.wrong()
          .map(
              o ->
                  Runs.debrief(
                      Runs.orders(o).entries(), OwnLines.of(List.of("A roar", EVIL, "Out"))))
          .toList();

  static Stream<Debrief> wrong() {
    return WRONG.stream();
  }

  @Test
  void theRoarIsWhereTheRunsTakeItToBe() {
    assertThat(Times.of(Runs.orders(List.of()).entries()).zeroTick()).isEqualTo(Runs.ROAR_TICK);
  }

  @ParameterizedTest
  @MethodSource("wrong")
  void allMendedIsARunWithoutACharge(Debrief debrief) {
    Outcome all = debrief.simulated().orElseThrow().allMended();
    assertThat(debrief.sheet().isPass()).isFalse();
    assertThat(all.points()).isEqualTo(100);
    assertThat(all.hurt() + all.down()).isZero();
  }

  @ParameterizedTest
  @MethodSource("wrong")
  void everyLostPointSaysWhatToDoDifferently(Debrief debrief) {
    assertThat(debrief.sheet().charges()).isNotEmpty();
    for (Charge c : debrief.sheet().charges()) {
      assertThat(debrief.lost().next(c)).as(c.step()).hasSizeGreaterThan(20);
      assertThat(debrief.lost().why(c)).as(c.step()).isNotEmpty();
    }
    assertThat(debrief.lesson().behaviours()).hasSizeBetween(1, 3);
  }

  @ParameterizedTest
  @MethodSource("wrong")
  void noLostPointIsToldInInnerNames(Debrief debrief) {
    for (Charge c : debrief.sheet().charges()) {
      Lost lost = debrief.lost();
      String told =
          String.join(
              " | ",
              lost.name(c),
              lost.happened(c),
              lost.should(c),
              lost.next(c),
              lost.reading(c).orElse(""));
      assertThat(told).as(c.step()).doesNotContainPattern("[a-z]\\.[a-z]").doesNotContain("dose");
    }
  }

  @Test
  void whatCameToItNamesThePeopleAndTheActThatWouldHaveSparedThem() {
    String late = String.join("\n", WRONG.get(1).text()).replaceAll("\\s+", " ");
    assertThat(late)
        .contains(
            "Checkman hurt at 0:26; blowerman hurt at 0:26. Everyone was ordered out at 0:37.")
        .contains("In the model one act alone would have spared this: Order to everyone: leave.");
  }

  @ParameterizedTest
  @MethodSource("wrong")
  void noLineIsWiderThanASmallTerminal(Debrief debrief) {
    assertThat(debrief.text()).allMatch(line -> line.length() <= 80);
    assertThat(debrief.text().get(0)).startsWith("DRILL");
    assertThat(debrief.html())
        .contains("<p class=\"drill\">DRILL</p>")
        .contains("<html lang=\"en\">");
  }

  @Test
  void peopleLeftTooLongAreHurtAndMendingThatAloneSavesThem() {
    Debrief.Simulated late = WRONG.get(1).simulated().orElseThrow();
    Cost clear =
        late.costs().stream()
            .filter(c -> c.charge().step().equals("clear"))
            .findFirst()
            .orElseThrow();
    assertThat(late.outcome().hurt() + late.outcome().down()).isPositive();
    assertThat(clear.isEnough()).isTrue();
    assertThat(clear.mended().hurt() + clear.mended().down()).isZero();
  }

  @Test
  void aRightRunHasNothingToMend() {
    Debrief debrief =
        Runs.debrief(Played.play(Runs.setup(), Runs.witness()).entries(), Optional.empty());
    Debrief.Simulated simulated = debrief.simulated().orElseThrow();
    assertThat(simulated.costs()).isEmpty();
    assertThat(simulated.allMended()).isEqualTo(simulated.outcome());
    assertThat(debrief.text()).contains("  No points were lost.");
  }

  @Test
  void theRunIsSimulatedAsItWasRecorded() {
    Played run = Runs.orders(Runs.WRONG_PLACE);
    Debrief debrief = Runs.debrief(run.entries(), Optional.empty());
    assertThat(debrief.simulated().orElseThrow().outcome()).isEqualTo(run.outcome());
  }

  @Test
  void aRecordThatDoesNotHoldIsToldAndNotSimulated() {
    List<Entry> entries = Runs.orders(Runs.TOO_LATE).entries();
    Debrief debrief =
        Debrief.of(
            new Debrief.Request(
                entries,
                SteamLeak.FOUND,
                List.of("line 7: " + EVIL),
                Optional.empty(),
                List.of(),
                Optional.empty()),
            Runs.witness());
    assertThat(debrief.simulated()).isEmpty();
    assertThat(debrief.text()).contains("THIS RECORD DOES NOT HOLD");
  }

  @Test
  void whatPeopleWriteIsNeverMarkup() {
    Optional<OwnLines> own = OwnLines.of(List.of(EVIL, "`" + EVIL + "`", EVIL));
    String html = Runs.debrief(Runs.orders(List.of()).entries(), own).html();
    assertThat(html)
        .doesNotContain("<script")
        .doesNotContain("\u202E")
        .doesNotContain("\u0007")
        .contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;x&quot; &#39;y&#39;");
  }

  @Test
  void thePageNeedsNothingFromElsewhere() {
    String html = WRONG.get(1).html();
    assertThat(html).doesNotContain("http:").doesNotContain("https:").doesNotContain("src=");
    assertThat(html.split("<svg ", -1)).hasSameSizeAs(html.split("</svg>", -1));
    assertThat(html.split("at each event,", -1).length)
        .as("a table for each drawing: its region's label and its caption")
        .isEqualTo(2 * html.split("<svg ", -1).length - 1);
  }

  @Test
  void aMomentShowsTwentySecondsAndNoMore() {
    List<String> lines = Moment.around(Runs.orders(Runs.TOO_LATE).entries(), SteamLeak.FOUND, 20);
    assertThat(lines).allMatch(line -> line.length() <= 80);
    assertThat(lines).anyMatch(l -> l.contains("trip saturated fuel trip"));
    assertThat(lines).noneMatch(l -> l.contains("leave.")).noneMatch(l -> l.contains("A roar"));
  }

  @Test
  void waterThatRisesAfterTheCheckmanLeftIsSaidToBeNobodysAct() {
    Debrief debrief = WRONG.get(1);
    assertThat(String.join(" ", debrief.text()).replaceAll(" +", " "))
        .contains("water out of sight high (the checkman had left at");
  }
}
