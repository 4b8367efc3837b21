package handwheel.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.logbook.Entry;
import handwheel.screen.SteamLeak;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every kind of entry in words, on the shipped ship. */
final class SentencesTest {
  private static final String WHO = "burnerman-superheater";
  private static final String TRIP = WHO + " trip fuel-trip-superheater";

  private final Sentences sentences = new Sentences(SteamLeak.FOUND);

  /** One entry of each kind, and what the trainee hears of it; empty for nothing. */
  private static Map<Entry, String> each() {
    Map<Entry, String> all = new LinkedHashMap<>();
    all.put(new Entry.Run(1, "0", "s", "0", "c", "0", 7, "scored"), "");
    all.put(new Entry.Drawn("hole", 1), "");
    all.put(new Entry.Inside(1, 1, WHO, 80, 900), "");
    all.put(new Entry.CautionShown("jet"), "");
    all.put(
        new Entry.OrderSaid(1, 1, 1, TRIP, 80, 900, false),
        "You to burnerman superheater side: trip superheater fuel trip.");
    all.put(new Entry.Acknowledged(2), "You: heard.");
    all.put(new Entry.Stopped(2), "The drill is stopped.");
    all.put(new Entry.Resumed(2), "The drill goes on.");
    all.put(new Entry.Ended(2, "a real casualty"), "The drill is ended: a real casualty.");
    all.put(
        new Entry.Repeated(3, 1, WHO, TRIP),
        "Burnerman superheater side: trip superheater fuel trip, aye.");
    all.put(
        new Entry.Refused(3, 2, "pumpman", "blower-1", "Steam in the way.", false),
        "Pumpman: Steam in the way.");
    all.put(new Entry.Began(3, 1, WHO, "fuel-trip-superheater", "superheater-front"), "");
    all.put(
        new Entry.Moved(4, 1, WHO, "fuel-trip-superheater", "superheater-front", 0),
        "Burnerman superheater side: superheater fuel trip tripped.");
    all.put(new Entry.Arrived(5, "supervisor", "lower-passage"), "You are at lower passage.");
    all.put(
        new Entry.Reading(6, 2, "remote-hand", "burner-line-pressure", 4600),
        "Remote-station hand: burner lines 5 psig.");
    all.put(
        new Entry.Looked(7, 3, "messenger", "blower-flat", "White fog."),
        "Messenger: blower flat: White fog.");
    all.put(
        new Entry.Passed(8, 4, "leak-report", "watch-engineer"),
        "Watch engineer: drill, leak report, aye.");
    all.put(
        new Entry.Counted(9, 5, 5, 7, "checkman pumpman"),
        "Count: 5 of 7. Missing: checkman, pumpman.");
    all.put(
        new Entry.CueGiven(10, "roar", true), "A roar overhead. You cannot hear your own voice.");
    all.put(new Entry.PhaseEntered(10, "leaking"), "");
    all.put(new Entry.Person(11, "checkman", "hurt", 300), "Checkman is hurt.");
    all.put(new Entry.PlantEvent(11, "burner s1 out"), "");
    all.put(new Entry.Broke(12, 3, "into-the-jet", "messenger go main-run", 0), "");
    all.put(new Entry.State(19, "00", new TreeMap<>()), "");
    all.put(new Entry.Score(38, "fail", List.of()), "");
    return all;
  }

  @Test
  void everyKindOfEntryHasItsSentenceOrNone() {
    Map<Entry, String> all = each();
    assertThat(all.keySet().stream().map(Entry::getClass).map(Class::getName))
        .containsExactlyInAnyOrderElementsOf(
            Arrays.stream(Entry.class.getPermittedSubclasses()).map(Class::getName).toList());
    List<String> said = new ArrayList<>();
    all.keySet().forEach(e -> said.add(sentences.heard(e).orElse("")));
    assertThat(said).containsExactlyElementsOf(all.values());
  }

  @Test
  void aWrongRepeatBackStandsAsItWasSaid() {
    sentences.heard(new Entry.OrderSaid(1, 1, 1, "pumpman shut tank-valve-1", 1, 1, false));
    String heard =
        sentences
            .heard(new Entry.Repeated(2, 1, "pumpman", "pumpman shut tank-valve-2"))
            .orElseThrow();
    assertThat(heard).isEqualTo("Pumpman: shut tank two suction valve, aye.");
  }

  @ParameterizedTest
  @CsvSource({
    "burnerman-saturated light burner-s1, burner-s1, 0, 'saturated burner 1 root open, torch out.'",
    "burnerman-saturated secure burner-s1, burner-s1, 0, saturated burner 1 secured.",
    "checkman shut main-stop from stop-grating, main-stop, 0, main steam stop shut.",
    "checkman open main-stop, main-stop, 1000, main steam stop open.",
    "checkman set main-stop to 40 %, main-stop, 400, main steam stop at 40 %.",
    "pumpman set fuel-governor to 180 psig, fuel-governor, 7, fuel pump governor set.",
    "blowerman trip blower-1, blower-1, 0, blower one tripped.",
    "blowerman stop blower-1, blower-1, 0, blower one stopped.",
    "pumpman reset fuel-trip-saturated, fuel-trip-saturated, 1000, saturated fuel trip reset."
  })
  void aManTellsWhatHeDidByTheOrderItWasFor(String say, String fitting, int pos, String done) {
    sentences.heard(new Entry.OrderSaid(1, 1, 1, say, 1, 1, false));
    String heard =
        sentences.heard(new Entry.Moved(9, 1, "pumpman", fitting, "x", pos)).orElseThrow();
    assertThat(heard).isEqualTo("Pumpman: " + done);
  }

  @Test
  void aTripIsNeverCalledShut() {
    // A pulled trip is not a shut valve: what proves it is the burner line's pressure.
    for (int n : new int[] {0, 1}) {
      sentences.heard(new Entry.OrderSaid(1, 1, 1, TRIP, 1, 1, false));
      Entry moved = new Entry.Moved(9, n, WHO, "fuel-trip-superheater", "superheater-front", 0);
      assertThat(sentences.heard(moved).orElseThrow()).endsWith("tripped.").doesNotContain("shut");
    }
  }

  @Test
  void reportsBeginWithTheWordDrill() {
    Entry report =
        new Entry.OrderSaid(1, 1, 1, "report leak-report to watch-engineer", -1, 1, false);
    assertThat(sentences.heard(report).orElseThrow())
        .isEqualTo("You to watch engineer: drill, leak report.");
  }

  @Test
  void whatCannotBeReadStandsAsItIs() {
    assertThat(sentences.heard(new Entry.OrderSaid(1, 1, 1, "dance", -1, 1, false)))
        .contains("You: dance.");
    assertThat(sentences.heard(new Entry.Moved(1, 9, "nobody", "no-valve", "x", 3)))
        .contains("Nobody: no-valve moved.");
    assertThat(sentences.heard(new Entry.Refused(1, 1, "pumpman", "", "No answer.", true)))
        .contains("No answer from pumpman.");
  }

  @Test
  void theTraineeIsYou() {
    assertThat(sentences.heard(new Entry.Person(1, "supervisor", "down", 1000)))
        .contains("You are down.");
    assertThat(sentences.heard(new Entry.OrderSaid(1, 1, 1, "supervisor go workshop", 1, 1, false)))
        .contains("You: go to workshop.");
    assertThat(sentences.heard(new Entry.OrderSaid(1, 1, 2, "read drum-level", 1, 1, false)))
        .contains("You: read drum level.");
  }

  @Test
  void clocksCountMinutesAndSeconds() {
    assertThat(Sentences.clock(0)).isEqualTo("0:00");
    assertThat(Sentences.clock(1319)).isEqualTo("1:05");
    assertThat(Sentences.clock(72_000)).isEqualTo("60:00");
  }
}
