package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.debrief.Scored;
import handwheel.debrief.Scripts;
import handwheel.drill.Mode;
import handwheel.drill.Rehearsal;
import handwheel.drill.SealedWatch;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Sealed drills give nothing away, can be made again, and are graded as their script is. */
final class SealedTest {
  private static final Scripts.Found LEAK = Shipped.STEAM_LEAK;

  @Test
  void nothingIsGivenAway() {
    Casualty sealed = SealedWatch.of(LEAK.casualty(), LEAK.ship(), 5);

    assertThat(sealed.title()).isEqualTo("A sealed drill");
    assertThat(sealed.brief()).doesNotContain("steam line").contains("or nothing");
    assertThat(sealed.cautions()).hasSizeGreaterThan(4).allMatch(c -> c.before().isEmpty());
    assertThat(sealed.messages()).contains("leak-report", "nothing-wrong");
    assertThat(sealed.sha256()).isEqualTo(LEAK.casualty().sha256());
  }

  @Test
  void theWatchBeforeItIsDrawnFromTheSeed() {
    Casualty sealed = SealedWatch.of(LEAK.casualty(), LEAK.ship(), 5);

    assertThat(SealedWatch.of(LEAK.casualty(), LEAK.ship(), 5)).isEqualTo(sealed);
    assertThat(SealedWatch.of(LEAK.casualty(), LEAK.ship(), 6)).isNotEqualTo(sealed);
    long watchTicks = sealed.limitTicks() - LEAK.casualty().limitTicks();
    assertThat(watchTicks).isBetween(120L * 20, 300L * 20);
    assertThat(SealedWatch.played(LEAK.casualty(), LEAK.ship(), 5, Mode.SCORED))
        .isEqualTo(LEAK.casualty());
  }

  /** The witness waits for the roar as ever; minutes of an ordinary watch come before it. */
  @Test
  void theScriptIsGradedAsEver() {
    Scripts.Found sealed = LEAK.played(5, Mode.SEALED);
    Rehearsal.Setup setup = new Rehearsal.Setup(sealed.ship(), sealed.casualty(), 5, Mode.SEALED);
    WitnessPlayer witness = new WitnessPlayer(sealed.casualty(), sealed.ship());
    Scored scored = Scored.play(setup, witness, e -> {}, s -> {});

    assertThat(scored.sheet().points()).isEqualTo(100);
    assertThat(scored.sheet().isPass()).isTrue();
    List<Entry.CueGiven> cues =
        scored.entries().stream()
            .filter(Entry.CueGiven.class::isInstance)
            .map(Entry.CueGiven.class::cast)
            .toList();
    assertThat(cues.get(0).id()).startsWith("steaming-");
    assertThat(Shipped.roarTick(scored.entries())).isGreaterThan(120 * 20);
  }

  @Test
  void aSealedRunIsFoundAgainBySeedAndMode() {
    Entry.Run run = new Entry.Run(1, "", "alder-reach", "", "steam-leak", "", 5, "sealed");

    assertThat(run.isScored()).isTrue();
    assertThat(Shipped.DRILLS.find(run).orElseThrow().casualty())
        .isEqualTo(LEAK.played(5, Mode.SEALED).casualty());
  }

  @Test
  void threeInTenAreOrdinaryAndFamiliesAreEven() {
    List<Shelf> shelves =
        List.of(
            shelf("quiet", SealedDraw.ORDINARY),
            shelf("leak-1", "leak"),
            shelf("leak-2", "leak"),
            shelf("water", "water"));
    SealedDraw draw = new SealedDraw(shelves, new Random(1));
    TreeMap<String, Integer> counts = new TreeMap<>();
    IntStream.range(0, 10_000)
        .forEach(i -> counts.merge(draw.next().orElseThrow(), 1, Integer::sum));

    assertThat(counts.get("quiet")).isBetween(2850, 3150);
    assertThat(counts.get("water")).isBetween(3350, 3650);
    assertThat(counts.get("leak-1")).isBetween(1600, 1900);
    assertThat(new SealedDraw(List.of(), new Random(1)).next()).isEmpty();
  }

  private static Shelf shelf(String name, String family) {
    Casualty c = LEAK.casualty();
    Casualty of =
        new Casualty(
            name,
            c.title(),
            family,
            c.ship(),
            c.objective(),
            c.sha256(),
            c.cautions(),
            c.brief(),
            c.start(),
            c.limitTicks(),
            c.vary(),
            c.phases(),
            c.response(),
            c.nevers(),
            c.outcomes(),
            c.passPoints(),
            c.witness());
    return new Shelf(name, Optional.of(of), "released", OptionalInt.empty());
  }
}
