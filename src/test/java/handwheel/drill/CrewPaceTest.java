package handwheel.drill;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.casualty.Casualty;
import handwheel.casualty.Variation;
import handwheel.logbook.Entry;
import handwheel.proof.WitnessPlayer;
import handwheel.reader.ShippedFiles;
import handwheel.scoring.ScoreSheet;
import handwheel.scoring.Scorer;
import handwheel.ship.Ship;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The witness does the steam leak right with the slowest and the fastest watch of the published
 * walking speeds (IMO MSC.1/Circ.1533 annex 3) at each end of the hole's range.
 */
class CrewPaceTest {
  private static final Ship SHIP = ShippedFiles.ship().value().orElseThrow();

  static Stream<Arguments> cases() {
    return Stream.of(Pace.slowest(), Pace.fastest())
        .flatMap(p -> Stream.of(0.75, 0.875, 1.0).map(hole -> Arguments.of(p, hole)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theWitnessDoesItRight(Pace pace, double holeIn) {
    Casualty casualty = with(ShippedFiles.steamLeak(), holeIn * 0.0254);
    for (long seed = 1; seed <= 5; seed++) {
      Paces paces = new Paces(seed, Optional.of(pace));
      List<Entry> entries =
          Rehearsal.play(
              sink -> Session.open(SHIP, casualty, paces, sink),
              new WitnessPlayer(casualty, SHIP),
              e -> {},
              s -> {});
      ScoreSheet sheet = Scorer.score(casualty, SHIP, entries);
      assertThat(sheet.charges()).as("seed %d", seed).isEmpty();
      assertThat(entries).noneMatch(Entry.Person.class::isInstance);
    }
  }

  private static Casualty with(Casualty c, double holeM) {
    List<Variation> vary =
        c.vary().stream()
            .map(v -> v.name().equals("hole") ? new Variation(v.name(), holeM, holeM, v.unit()) : v)
            .toList();
    return new Casualty(
        c.id(),
        c.title(),
        c.family(),
        c.ship(),
        c.objective(),
        c.sha256(),
        c.cautions(),
        c.brief(),
        c.start(),
        c.limitTicks(),
        vary,
        c.phases(),
        c.response(),
        c.nevers(),
        c.outcomes(),
        c.passPoints(),
        c.witness());
  }
}
