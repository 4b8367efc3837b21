package handwheel.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Changes are said, not samples. */
final class ChangesTest {
  private final Changes changes = new Changes();

  private List<String> see(long tick, String place, double share, String air) {
    Dial dial =
        new Dial(
            "drum", "drum pressure", Math.round(share * 800) + " psig", share, new Scale(0, 800));
    return changes.in(new Sighting(tick, place, false, air, List.of(dial), List.of()));
  }

  @Test
  void aGaugeIsSaidAtFirstAndThenOnlyWhenItHasMovedATenthOfItsScale() {
    assertThat(see(0, "board", 0.75, "")).containsExactly("drum pressure 600 psig");
    assertThat(see(400, "board", 0.70, "")).isEmpty();
    assertThat(see(600, "board", 0.64, "")).containsExactly("drum pressure 512 psig, falling");
    assertThat(see(1000, "board", 0.80, "")).containsExactly("drum pressure 640 psig, rising");
  }

  @Test
  void noGaugeIsSaidMoreOftenThanEveryTenSeconds() {
    see(0, "board", 0.75, "");
    assertThat(see(100, "board", 0.1, "")).isEmpty();
    assertThat(see(200, "board", 0.1, "")).hasSize(1);
  }

  @Test
  void whereverHeComesToHeReadsAfresh() {
    see(0, "board", 0.75, "");
    assertThat(see(20, "front", 0.75, "")).containsExactly("drum pressure 600 psig");
  }

  @Test
  void onTheWayHeReadsNothing() {
    see(0, "board", 0.75, "");
    Dial dial = new Dial("bilge", "bilge", "1 ft", 0.2, new Scale(0, 6));
    Sighting passing = new Sighting(20, "lower door", true, "", List.of(dial), List.of());
    assertThat(changes.in(passing)).isEmpty();
  }

  @Test
  void theAirIsSaidWhenItChanges() {
    see(0, "board", 0.75, "");
    assertThat(see(20, "board", 0.75, "The air burns.")).containsExactly("The air burns.");
    assertThat(see(40, "board", 0.75, "The air burns.")).isEmpty();
    assertThat(see(60, "board", 0.75, "")).containsExactly("The air is as usual.");
  }
}
