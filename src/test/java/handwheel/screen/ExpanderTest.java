package handwheel.screen;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.ship.Order;
import handwheel.ship.OrderResult;
import handwheel.ship.OrderText;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Typing by beginnings of words, completion and short forms, on the shipped ship. */
final class ExpanderTest {
  private final Expander expander = SteamLeak.expander();

  @ParameterizedTest
  @CsvSource({
    "re g re, remote-hand go remote-station",
    "ev l, everyone leave",
    "EVERYONE LEAVE, everyone leave",
    "bu-sat tr f-t-sat, burnerman-saturated trip fuel-trip-saturated",
    "read drum-l, read drum-level",
    "che set drum-level to 2 in, checkman set drum-level to 2 in",
    "pu set fuel-gov to 180 psig, pumpman set fuel-governor to 180 psig",
    "pump tri blower-1 blower-2 from remote, "
        + "pumpman trip blower-1 blower-2 from remote-station",
    "rep leak to watch, report leak-report to watch-engineer",
    "bel pump, belay pumpman"
  })
  void wordsMayBeCutShort(String typed, String full) {
    Expansion means = expander.expand(typed);
    assertThat(means.sentences()).containsExactly(full);
    assertThat(means.isComplete()).isTrue();
    assertThat(means.orders().get(0).text()).isEqualTo(full);
  }

  @ParameterizedTest
  @CsvSource({
    "re, Which? remote-hand; report; read",
    "burnerman, Which? burnerman-saturated; burnerman-superheater",
    "checkman, Next: a verb.",
    "checkman shut, Next: a fitting to shut.",
    "checkman set drum-level, Next: `to`; or another fitting.",
    "chekman, `chekman` read as `checkman`. Next: a verb.",
    "chkm, `chkm` where a watchstander or an order to all was expected.",
    "everyone leave now, `now` where the end of the order was expected."
  })
  void whatIsMissingOrWrongIsTold(String typed, String message) {
    Expansion means = expander.expand(typed);
    assertThat(means.isComplete()).isFalse();
    assertThat(means.message()).isEqualTo(message.replace(";", ","));
  }

  @Test
  void aSlipOfTheFingersIsMendedAndTold() {
    Expansion means = expander.expand("checkman shut man-stop");
    assertThat(means.sentences()).containsExactly("checkman shut main-stop");
    assertThat(means.isComplete()).isTrue();
    assertThat(means.message()).isEqualTo("`man-stop` read as `main-stop`.");
  }

  @ParameterizedTest
  @CsvSource({
    "shut main-stop checkman, checkman shut main-stop",
    "main check shut, checkman shut main-stop",
    "go remote-station remote-hand, remote-hand go remote-station",
    "drum-l read, read drum-level"
  })
  void theWordsMayStandInAnyOrderThatOneReadingHas(String typed, String full) {
    assertThat(expander.expand(typed).sentences()).containsExactly(full);
    assertThat(expander.expand(typed).isComplete()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "s3i, burnerman-saturated light burner-s3",
    "s2x, burnerman-saturated secure burner-s2",
    "s45rs, burnerman-saturated shut root-s4 root-s5",
    "hrs, burnerman-superheater shut root-h1 root-h2 root-h3",
    "h2go, burnerman-superheater open register-h2",
    "fpa, pumpman start fuel-pump",
    "fpx, pumpman trip fuel-pump",
    "fpxr, remote-hand trip fuel-pump from remote-station",
    "efa, pumpman start emergency-feed-pump",
    "cs, checkman shut feed-check",
    "csr, remote-hand shut feed-check from remote-station",
    "f1s, blowerman shut intake-flap-1",
    "bv2o, blowerman open blower-valve-2",
    "d1o, messenger open scroll-drain-1",
    "o180, pumpman set fuel-governor to 180 psig",
    "a60, blowerman set blower-valve-1 blower-valve-2 to 60 %",
    "t2, pumpman set fuel-suction to tank-2",
    "dp?, read drum-pressure",
    "bs??, burnerman-saturated read burner-line-saturated",
    "bl?r, remote-hand read burner-line-pressure",
    "sa?, pumpman read salinity",
    "/l, report leak-report to watch-engineer"
  })
  void oneRuleMakesTheOtherShortForms(String typed, String full) {
    assertThat(expander.expand(typed).sentences()).containsExactly(full);
    assertThat(expander.expand(typed).isComplete()).isTrue();
  }

  @Test
  void aLineThatCanBeReadInTwoWaysIsNoOrder() {
    // Both burnermen can secure a burner; only one is meant.
    assertThat(expander.expand("burn secure burner-s1").isComplete()).isFalse();
    assertThat(expander.expand("burnerman-sat secure burner-s1").isComplete()).isTrue();
  }

  @Test
  void anyBeginningThatOneWordOnlyHasMeansThatWord() {
    OrderGrammar grammar = new OrderGrammar(SteamLeak.FOUND.ship(), List.of("leak-report"));
    List<String> starts = grammar.after(List.of()).words();
    for (String word : starts) {
      for (int i = 1; i <= word.length(); i++) {
        String typed = word.substring(0, i);
        long fitting = starts.stream().filter(w -> w.startsWith(typed)).count();
        boolean isOne = fitting == 1 || starts.contains(typed);
        assertThat(expander.offered(typed).equals(List.of(word)))
            .as(typed)
            .isEqualTo(isOne && (fitting == 1 || word.equals(typed)));
      }
    }
  }

  @Test
  void whateverTheGrammarOffersTheReaderOfOrdersUnderstands() {
    OrderText reader = new OrderText(SteamLeak.FOUND.ship(), SteamLeak.FOUND.casualty().messages());
    Random random = new Random(20);
    for (int i = 0; i < 2000; i++) {
      String sentence = String.join(" ", walked(random));
      OrderResult result = reader.read(sentence);
      assertThat(result).as(sentence).isInstanceOf(OrderResult.Understood.class);
      Order order = ((OrderResult.Understood) result).order();
      assertThat(expander.expand(sentence).orders()).as(sentence).containsExactly(order);
    }
  }

  /** Walks the grammar to an end by chance. */
  private static List<String> walked(Random random) {
    OrderGrammar grammar =
        new OrderGrammar(SteamLeak.FOUND.ship(), SteamLeak.FOUND.casualty().messages());
    List<String> words = new ArrayList<>();
    Slot slot = grammar.after(words);
    while (!slot.canEnd() || (!slot.words().isEmpty() && words.size() < 6)) {
      if (slot.isFree()) {
        words.add(random.nextBoolean() ? "60%" : "clear");
        return words;
      }
      words.add(slot.words().get(random.nextInt(slot.words().size())));
      slot = grammar.after(words);
    }
    return words;
  }

  @ParameterizedTest
  @CsvSource({
    "bu-sat tr, 'burnerman-saturated trip '",
    "bu, burnerman-s",
    "ev, 'everyone '",
    "'everyone ', 'everyone leave '",
    "pump tr tan, pumpman trip tank-valve-",
    "b t, b t",
    "xx, xx",
    "zzz, zzz"
  })
  void tabAddsWhatThereIsOnlyOneWayFor(String typed, String completed) {
    assertThat(expander.completed(typed)).isEqualTo(completed);
  }

  @Test
  void shortFormsStandForFullOrders() {
    assertThat(expander.expand("xx").sentences())
        .containsExactly(
            "burnerman-superheater trip fuel-trip-superheater",
            "burnerman-saturated trip fuel-trip-saturated");
    assertThat(expander.expand("XX").orders()).hasSize(2);
    assertThat(expander.expand("gg").sentences()).containsExactly("everyone leave");
    assertThat(expander.expand("/").sentences())
        .containsExactly("report leak-report to watch-engineer");
    assertThat(expander.expand("mssr").sentences().get(0)).endsWith("from remote-station");
    assertThat(expander.card().stream().map(ShortForms.Form::code))
        .contains("xx", "hx", "sx", "mss", "mssr", "bksr", "gg", "ct", "/", "b1x", "b2x")
        .doesNotHaveDuplicates();
  }

  @Test
  void everyShortFormIsAnOrderAndNoFormNeedsOneKeyOnlyToActOnFittings() {
    for (ShortForms.Form form : expander.card()) {
      assertThat(expander.expand(form.code()).isComplete()).as(form.code()).isTrue();
      boolean isOnFittings =
          expander.expand(form.code()).orders().stream().anyMatch(Order.Work.class::isInstance);
      assertThat(isOnFittings && form.code().length() < 2).as(form.code()).isFalse();
    }
  }
}
