package handwheel.screen;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.drill.Input;
import handwheel.drill.Mode;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Keys and other events: what state follows, and what is done. */
final class ReactionTest {
  private final Ground ground = SteamLeak.ground();
  private final List<Deed> deeds = new ArrayList<>();
  private State state = Sample.running(100);

  private void happen(Event event) {
    Next next = Reaction.react(ground, state, event);
    state = next.state();
    deeds.addAll(next.deeds());
  }

  private void press(Key.Kind kind) {
    happen(new Event.Pressed(Key.of(kind)));
  }

  private void type(String text) {
    text.chars().forEach(c -> happen(new Event.Pressed(Key.letter((char) c))));
  }

  private void tick(long tick) {
    happen(new Event.Tick(Sample.board(tick)));
  }

  private List<Input> inputs() {
    return deeds.stream()
        .filter(Deed.Offer.class::isInstance)
        .map(d -> ((Deed.Offer) d).input())
        .toList();
  }

  private List<String> said() {
    return inputs().stream()
        .filter(Input.Said.class::isInstance)
        .map(i -> ((Input.Said) i).order().text())
        .toList();
  }

  @Test
  void theFirstKeyIsTheInstantOfAnOrder() {
    type("every");
    tick(130);
    type(" l");
    press(Key.Kind.ENTER);
    assertThat(said()).containsExactly("everyone leave");
    assertThat(((Input.Said) inputs().get(0)).firstKeyTick()).isEqualTo(100);
    assertThat(state.line().isEmpty()).isTrue();
  }

  @Test
  void aLineThatWasEmptiedBeginsAnew() {
    type("x");
    press(Key.Kind.BACK);
    tick(200);
    type("gg");
    press(Key.Kind.ENTER);
    assertThat(((Input.Said) inputs().get(0)).firstKeyTick()).isEqualTo(200);
  }

  @Test
  void enterGivesNothingThatIsNotComplete() {
    type("burnerman trip");
    press(Key.Kind.ENTER);
    assertThat(deeds).isEmpty();
    assertThat(state.line().typed()).isEqualTo("burnerman trip");
    assertThat(state.notice()).startsWith("Which?");
    type(" ");
    assertThat(state.notice()).isEmpty();
  }

  @Test
  void firesOutTakesTwoKeysAndEnter() {
    type("xx");
    assertThat(deeds).isEmpty();
    assertThat(state.line().expansion().full())
        .isEqualTo(
            "burnerman-superheater trip fuel-trip-superheater"
                + " + burnerman-saturated trip fuel-trip-saturated");
    press(Key.Kind.ENTER);
    assertThat(said()).hasSize(2);
  }

  @Test
  void upBringsTheLastOrderBack() {
    type("gg");
    press(Key.Kind.ENTER);
    press(Key.Kind.UP);
    assertThat(state.line().typed()).isEqualTo("gg");
    press(Key.Kind.ENTER);
    assertThat(said()).containsExactly("everyone leave", "everyone leave");
  }

  @Test
  void tabFillsInAndThenLists() {
    type("bu-sat tr");
    press(Key.Kind.TAB);
    assertThat(state.line().typed()).isEqualTo("burnerman-saturated trip ");
    press(Key.Kind.TAB);
    assertThat(state.notice()).startsWith("Next: fuel-trip-saturated");
  }

  @Test
  void aWordAndALineCanBeTakenBack() {
    type("checkman shut main");
    press(Key.Kind.WORD_BACK);
    assertThat(state.line().typed()).isEqualTo("checkman shut ");
    press(Key.Kind.ESCAPE);
    assertThat(state.line().isEmpty()).isTrue();
  }

  @Test
  void anEqualsSignOnAnEmptyLineSaysHeard() {
    type("=");
    assertThat(inputs()).containsExactly(new Input.Acknowledged());
    type("a=");
    assertThat(inputs()).hasSize(1);
  }

  @Test
  void nBelaysWhoRepeatedLastAndSaysItAgainAsItWasSaid() {
    type("n");
    assertThat(said()).containsExactly("belay checkman", "checkman go workshop");
    deeds.clear();
    state = state.hearing(Hearing.NOTHING);
    type("n");
    assertThat(deeds).isEmpty();
    assertThat(state.notice()).isEqualTo("Nobody has repeated an order yet.");
  }

  @Test
  void aCommaStopsWhoWasToldLastAndZTellsAgainWhatWasHeard() {
    type(",");
    assertThat(said()).containsExactly("belay checkman");
    type("z");
    assertThat(state.notice()).startsWith("Again: ").contains("Checkman: go to engine room");
    assertThat(inputs()).hasSize(1);
  }

  @Test
  void twoExclamationMarksStopTheDrillWhateverIsTyped() {
    type("burn!!");
    assertThat(inputs()).containsExactly(new Input.Stopped());
    assertThat(state.stage()).isEqualTo(Stage.STOPPED);
    assertThat(state.line().isEmpty()).isTrue();
    press(Key.Kind.ENTER);
    assertThat(inputs()).containsExactly(new Input.Stopped(), new Input.Resumed());
    assertThat(state.stage()).isEqualTo(Stage.RUNNING);
  }

  @Test
  void aThirdIsARealCasualty() {
    type("!!!");
    assertThat(deeds).contains(new Deed.Leave(true));
  }

  @Test
  void onTheStoppedScreenOneIsEnoughWheneverItComes() {
    type("!!");
    press(Key.Kind.DOWN);
    type("!");
    assertThat(deeds).contains(new Deed.Leave(true));
  }

  @Test
  void threeLeaveFromEveryPage() {
    for (Stage stage : Stage.values()) {
      state = Sample.running(1).at(stage);
      deeds.clear();
      type("!!!");
      assertThat(deeds).as(stage.name()).contains(new Deed.Leave(true));
    }
  }

  @Test
  void oneInterruptAsksTheSecondEnds() {
    press(Key.Kind.INTERRUPT);
    assertThat(deeds).isEmpty();
    assertThat(state.notice()).startsWith("Ctrl-C again");
    type("x");
    press(Key.Kind.INTERRUPT);
    assertThat(deeds).isEmpty();
    press(Key.Kind.INTERRUPT);
    assertThat(inputs()).containsExactly(new Input.Ended("ended at the terminal"));
  }

  @Test
  void anOrderBegunOnTheHelpPageIsNotLost() {
    type("?");
    assertThat(state.stage()).isEqualTo(Stage.HELP);
    type("x");
    assertThat(state.stage()).isEqualTo(Stage.RUNNING);
    assertThat(state.line().typed()).isEqualTo("x");
    press(Key.Kind.ESCAPE);
    type("?");
    type(" ");
    assertThat(state.line().isEmpty()).isTrue();
    assertThat(state.stage()).isEqualTo(Stage.RUNNING);
  }

  @Test
  void cautionsAreAcknowledgedOneByOneThenTheBriefThenTheDrillBegins() {
    state = State.first(Mode.PRACTICE);
    for (int i = 0; i < ground.pages().cautions(); i++) {
      assertThat(state.stage()).isEqualTo(Stage.CAUTION);
      assertThat(state.page()).isEqualTo(i);
      type("x ok");
      press(Key.Kind.ENTER);
    }
    assertThat(state.stage()).isEqualTo(Stage.BRIEF);
    assertThat(deeds).isEmpty();
    press(Key.Kind.ENTER);
    assertThat(deeds).containsExactly(new Deed.Begin());
  }

  @Test
  void nothingUnseenIsAcknowledged() {
    state = State.first(Mode.PRACTICE);
    happen(new Event.Resized(new Size(60, 20)));
    press(Key.Kind.ENTER);
    assertThat(state.page()).isZero();
  }

  @Test
  void aStandstillIsAStop() {
    happen(new Event.StoodStill(12));
    assertThat(inputs()).containsExactly(new Input.Stopped());
    assertThat(state.notice()).contains("12 s");
    happen(new Event.StoodStill(12));
    assertThat(inputs()).hasSize(1);
  }

  @Test
  void theScoreSheetIsPagedAndStaysUntilItIsLeft() {
    List<String> sheet = new ArrayList<>();
    for (int i = 0; i < 50; i++) {
      sheet.add("line " + i);
    }
    type("checkman");
    happen(new Event.Over(sheet));
    assertThat(state.stage()).isEqualTo(Stage.OVER);
    press(Key.Kind.ENTER);
    assertThat(state.top()).isEqualTo(20);
    press(Key.Kind.PAGE_DOWN);
    press(Key.Kind.PAGE_DOWN);
    assertThat(state.top()).isEqualTo(30);
    press(Key.Kind.ENTER);
    press(Key.Kind.UP);
    assertThat(state.top()).isEqualTo(29);
    assertThat(deeds).isEmpty();
    happen(new Event.Resized(new Size(80, 60)));
    assertThat(state.top()).isZero();
    type("q");
    assertThat(deeds).containsExactly(new Deed.Leave(false));
  }

  @Test
  void noOrderIsLongerThanALine() {
    type("a".repeat(500));
    assertThat(state.line().typed()).hasSize(200);
  }
}
