package handwheel.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ChainTest {
  /** Both digests were worked out with Python's hashlib from the rule as the format page has it. */
  private static final String FIRST =
      "0030e8d1320021009743d55b8aaa83563b6fb13c972a1614e2895a76e71c5e42";

  private static final String SECOND =
      "5d5059bde77ef81d43bf15f0c1fc330afb250de719a4e3ea8a9ec0373cabdc0d";

  @Test
  void eachLineIsBoundToTheOneBefore() {
    Chain chain = new Chain();
    assertThat(chain.last()).isEqualTo("0".repeat(64));
    assertThat(chain.append("{\"k\":\"heard\",\"t\":1}"))
        .isEqualTo("{\"k\":\"heard\",\"t\":1,\"h\":\"" + FIRST + "\"}");
    assertThat(chain.append("{\"k\":\"ended\",\"t\":2,\"why\":\"T\u00e9\"}"))
        .isEqualTo("{\"k\":\"ended\",\"t\":2,\"why\":\"T\u00e9\",\"h\":\"" + SECOND + "\"}");
    assertThat(chain.last()).isEqualTo(SECOND);
  }

  @Test
  void goesOnFromAKnownH() {
    assertThat(Chain.after(FIRST).append("{\"k\":\"ended\",\"t\":2,\"why\":\"T\u00e9\"}"))
        .contains(SECOND);
  }

  @Test
  void refusesWhatIsNoObject() {
    assertThatThrownBy(() -> new Chain().append("heard"))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
