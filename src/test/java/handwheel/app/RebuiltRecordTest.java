package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.debrief.LedgerComparison;
import handwheel.debrief.Scored;
import handwheel.debrief.Scripts;
import handwheel.debrief.Trouble;
import handwheel.debrief.Verification;
import handwheel.drill.Engine;
import handwheel.drill.Input;
import handwheel.drill.Mode;
import handwheel.drill.Player;
import handwheel.drill.Rehearsal;
import handwheel.logbook.About;
import handwheel.logbook.Chain;
import handwheel.logbook.ChainedEntries;
import handwheel.logbook.End;
import handwheel.logbook.Entry;
import handwheel.logbook.LedgerLine;
import handwheel.logbook.LedgerText;
import handwheel.logbook.RecordText;
import handwheel.logbook.RunRecord;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * A forger who works out every hash anew: each line of a short run dropped, repeated, swapped, and
 * each of its values changed, the chain whole again every time. Simulation or ledger must tell.
 */
class RebuiltRecordTest {
  private static final String FILE = "0001-steam-leak-3.hwr";
  private static final Scripts SCRIPTS = (ship, script) -> Optional.of(Shipped.STEAM_LEAK);
  private static final Pattern VALUE =
      Pattern.compile("\"(\\w[\\w-]*)\":(-?\\d+|true|false|\"(?:[^\"\\\\]|\\\\.)*\")");

  private final List<String> lines = shortRun();
  private final LedgerComparison ledger = ledgerOf(RecordText.read(file(lines)));

  @Test
  void theRunItselfHolds() {
    assertThat(found(lines)).isEmpty();
    assertThat(lines.size()).isBetween(15, 80);
  }

  @Test
  void aLineDroppedRepeatedOrSwappedIsFoundAndNamed() {
    for (int i = 1; i < lines.size() - 1; i++) {
      List<String> dropped = new ArrayList<>(lines);
      dropped.remove(i);
      assertFound(dropped, "dropped " + i);
      List<String> repeated = new ArrayList<>(lines);
      repeated.add(i, lines.get(i));
      assertFound(repeated, "repeated " + i);
      List<String> swapped = new ArrayList<>(lines);
      Collections.swap(swapped, i, Math.min(i + 1, lines.size() - 2));
      if (!swapped.equals(lines)) {
        assertFound(swapped, "swapped " + i);
      }
    }
  }

  @Test
  void aValueChangedIsFoundAndNamed() {
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      for (MatchResult m : VALUE.matcher(line).results().toList()) {
        if (!m.group(1).equals("k") && !m.group(1).equals("about")) {
          List<String> changed = new ArrayList<>(lines);
          String other = m.group(1).equals("mode") ? "\"learn\"" : other(m.group(2));
          changed.set(i, line.substring(0, m.start(2)) + other + line.substring(m.end(2)));
          assertFound(changed, "line " + (i + 1) + " value " + m.group(1));
        }
      }
    }
  }

  /** The three that a simulation alone cannot see. */
  @Test
  void firstKeyModeAndTraineeAreToldByTheLedgerAlone() {
    for (String rebuilt :
        List.of("\"from\":40>\"from\":41", "\"practice\">\"learn\"", "P-0001>P-0002")) {
      int to = rebuilt.indexOf('>');
      List<String> changed =
          lines.stream()
              .map(l -> l.replace(rebuilt.substring(0, to), rebuilt.substring(to + 1)))
              .toList();
      assertThat(changed).isNotEqualTo(lines);
      List<Trouble> found = found(changed);
      assertThat(found).as(rebuilt).extracting(Trouble::kind).contains(Trouble.Kind.LEDGER);
    }
  }

  @Test
  void aDifferenceNamesLineKindAndField() {
    int moved = indexOf("\"k\":\"order\"");
    List<String> changed = new ArrayList<>(lines);
    changed.set(moved, lines.get(moved).replace("\"need\":", "\"need\":1"));
    Trouble first = found(changed).get(0);
    assertThat(first.line()).isEqualTo(moved + 1);
    assertThat(first.kind()).isEqualTo(Trouble.Kind.SIMULATION);
    assertThat(first.text()).contains("`need` is 1").doesNotContain("\"k\"");
  }

  @Test
  void anOlderEngineIsToldApartFromTampering() {
    List<String> older = new ArrayList<>(lines);
    older.set(1, lines.get(1).replace(Engine.VERSION, "0.0.9"));
    Verification verification = Verification.of(RecordText.read(file(older)), SCRIPTS);
    assertThat(verification.isOnlyOfOtherEngine()).isTrue();
    assertThat(verification.troubles().get(0)).contains("No sign of tampering");
    List<String> tampered = new ArrayList<>(older);
    Collections.swap(tampered, 3, 4);
    byte[] file = String.join("\n", tampered).concat("\n").getBytes(StandardCharsets.UTF_8);
    assertThat(Verification.of(RecordText.read(file), SCRIPTS).isOnlyOfOtherEngine()).isFalse();
  }

  @Test
  void aRecordThatIsGoneShowsInTheLedger() {
    assertThat(ledger.itself(Collections.emptySortedSet()))
        .extracting(Trouble::text)
        .containsExactly(
            "run 1 was finished, its record `" + FILE + "` is not here. No reason noted.");
  }

  private void assertFound(List<String> changed, String as) {
    assertThat(found(changed)).as(as).isNotEmpty();
  }

  private List<Trouble> found(List<String> some) {
    RunRecord record = RecordText.read(file(some));
    List<Trouble> all = new ArrayList<>(Verification.of(record, SCRIPTS).found());
    all.addAll(ledger.of(FILE, record));
    return all;
  }

  private int indexOf(String part) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).contains(part)) {
        return i;
      }
    }
    throw new IllegalArgumentException(part);
  }

  private static String other(String value) {
    if (value.startsWith("\"")) {
      return value.substring(0, value.length() - 1) + "x\"";
    }
    return switch (value) {
      case "true" -> "false";
      case "false" -> "true";
      default -> String.valueOf(Long.parseLong(value) + 1);
    };
  }

  /** Binds the lines anew, about and end included. */
  private static byte[] file(List<String> bare) {
    StringBuilder text = new StringBuilder();
    Chain alone = new Chain();
    Chain chain = new Chain();
    text.append(alone.append(bare.get(0))).append('\n');
    for (String line : bare.subList(1, bare.size())) {
      text.append(chain.append(line.replace("ABOUT", alone.last()))).append('\n');
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static LedgerComparison ledgerOf(RunRecord record) {
    Chain chain = new Chain();
    String numbered = new LedgerLine.Numbered(1, FILE, Chain.START).line();
    String finished =
        new LedgerLine.Finished(1, record.digest().orElseThrow(), record.endH().orElseThrow())
            .line();
    String text = chain.append(numbered) + "\n" + chain.append(finished) + "\n";
    return new LedgerComparison(LedgerText.read(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** Ten seconds with one order and an end. */
  private static List<String> shortRun() {
    About about = new About(1, Chain.START, "P-0001", "2031-02-03T08:15:00Z", "P-0001", "", "");
    List<String> bare = new ArrayList<>(List.of(about.line()));
    ChainedEntries chained =
        new ChainedEntries(l -> bare.add(l.substring(0, l.lastIndexOf(",\"h\":")) + "}"));
    Rehearsal.Setup setup =
        new Rehearsal.Setup(
            Shipped.STEAM_LEAK.ship(), Shipped.STEAM_LEAK.casualty(), 3, Mode.PRACTICE);
    Scored.play(setup, new Brief(), chained, s -> {});
    bare.add(new End("over", "", "ABOUT").line());
    return bare;
  }

  private static final class Brief implements Player {
    @Override
    public void note(Entry entry) {
      // It does not listen.
    }

    @Override
    public List<Input> inputs(long now) {
      if (now == 50) {
        return List.of(
            new Input.Said(new handwheel.ship.Order.Go("messenger", "stop-grating"), 40));
      }
      return now == 200 ? List.of(new Input.Ended("enough")) : List.of();
    }
  }
}
