package handwheel.drill;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Does each casualty look right to a boiler technician: line by line the list that was drawn up
 * with the independent study, its directions, orders and classes as well as its figures, each to
 * the last digit printed. Informed by common practice; nobody measured a ship.
 */
class TechniciansListTest {
  static Stream<Claim> lines() {
    return Stream.of(FireClaims.all(), SteamClaims.all(), RoomClaims.all()).flatMap(List::stream);
  }

  @ParameterizedTest
  @MethodSource("lines")
  void itLooksRight(Claim line) {
    line.holds().run();
  }
}
