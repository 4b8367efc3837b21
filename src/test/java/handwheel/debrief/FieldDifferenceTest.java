package handwheel.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The first field in which two lines differ. */
final class FieldDifferenceTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "{\"k\":\"a\",\"t\":1}|{\"k\":\"a\",\"t\":2}|`t`: the record says 1 and the simulation 2",
        "{\"k\":\"a,}\\\"\",\"t\":1}|{\"k\":\"a,}\\\"\",\"t\":2}|`t`: the record says 1 and the simulation 2",
        "{\"g\":{\"x\":1,\"y\":2}}|{\"g\":{\"x\":1,\"y\":3}}|in `g` `y`: the record says 2 and the simulation 3",
        "{\"g\":[{\"x\":1}],\"z\":1}|{\"g\":[{\"x\":1}],\"z\":4}|`z`: the record says 1 and the simulation 4",
        "{\"k\":\"a\"}|nothing|`k`: the record says \"a\" and the simulation nothing"
      })
  void isNamed(String was, String is, String text) {
    assertThat(FieldDifference.text(was, is)).isEqualTo(text);
  }
}
