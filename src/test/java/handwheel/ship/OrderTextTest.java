package handwheel.ship;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.reader.ShippedFiles;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Orders in their canonical form. */
class OrderTextTest {
  private static final OrderText READER =
      new OrderText(ShippedFiles.ship().value().orElseThrow(), List.of("leak-report"));

  @ParameterizedTest
  @ValueSource(
      strings = {
        "everyone leave",
        "muster lower-passage",
        "belay checkman",
        "read drum-level",
        "remote-hand read line-pressure",
        "messenger go remote-station",
        "pumpman look fuel-station",
        "report leak-report to watch-engineer",
        "remote-hand shut main-stop",
        "remote-hand shut main-stop from remote-station",
        "pumpman trip blower-1 blower-2 from remote-station",
        "blowerman set blower-valve-1 to 60 %",
        "pumpman set header-pressure to 180 psig",
        "pumpman set fuel-suction to tank-2 from fuel-station"
      })
  void printsWhatItReads(String text) {
    OrderResult result = READER.read(text);
    assertThat(result).isInstanceOf(OrderResult.Understood.class);
    assertThat(((OrderResult.Understood) result).order().text()).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "checkmann shut main-stop, 1, `checkman`",
    "checkman shutt main-stop, 10, `shut`",
    "checkman shut man-stop, 15, `main-stop`",
    "checkman shut main-stop from stop-gratin, 30, `stop-grating`",
    "report leak-rport to watch-engineer, 8, `leak-report`",
    "muster lower-pasage, 8, `lower-passage`",
    "everyone leaves, 10, ''",
    "blowerman set blower-valve-1, 29, to 60 %",
    "read drum-level now, 17, Leave it out."
  })
  void saysWhereItIsWrongAndWhatIsNear(String text, int column, String mend) {
    OrderResult.NotUnderstood wrong = (OrderResult.NotUnderstood) READER.read(text);
    assertThat(wrong.column()).isEqualTo(column);
    assertThat(wrong.mend()).contains(mend);
  }
}
