package handwheel.app;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.drill.Mode;
import handwheel.drill.Session;
import handwheel.logbook.Entry;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A session is a fold: the same inputs give the same entries, and a copy goes on alike. */
class DeterminismTest {
  @Test
  void theSameSeedGivesTheSameEntries() {
    assertThat(Shipped.witness(5).entries()).isEqualTo(Shipped.witness(5).entries());
  }

  @Test
  void aCopyGoesOnAsItsOriginal() {
    List<Entry> one = new ArrayList<>();
    Session session =
        Session.open(
            Shipped.STEAM_LEAK.ship(), Shipped.STEAM_LEAK.casualty(), 4, Mode.PRACTICE, one::add);
    for (int i = 0; i < 1500; i++) {
      session.tick();
    }
    List<Entry> two = new ArrayList<>();
    Session copy = session.copy(two::add);
    assertThat(copy.digest()).isEqualTo(session.digest());
    one.clear();
    for (int i = 0; i < 400; i++) {
      session.tick();
      copy.tick();
    }
    assertThat(copy.digest()).isEqualTo(session.digest());
    assertThat(two).isEqualTo(one).isNotEmpty();
  }
}
