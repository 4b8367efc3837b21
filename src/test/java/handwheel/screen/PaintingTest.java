package handwheel.screen;

import static org.assertj.core.api.Assertions.assertThat;

import handwheel.drill.Mode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Frames as text, approved by eye; {@code -Dgolden.update=true} writes them anew. */
final class PaintingTest {
  private final Ground ground = SteamLeak.ground();
  private final Painting painting = new Painting(ground);

  private State typed(State state, String text) {
    State next = state;
    for (int i = 0; i < text.length(); i++) {
      Event key = new Event.Pressed(Key.letter(text.charAt(i)));
      next = Reaction.react(ground, next, key).state();
    }
    return next;
  }

  @Test
  void theBoardIsAsApproved() throws IOException {
    State state = Sample.running(1300);
    approve("board-80x24", draw(state, 80, 24));
    approve("board-100x30", draw(state, 100, 30));
    approve("board-160x50", draw(state, 160, 50));
    approve("board-120x40", draw(state, 120, 40));
    approve("board-200x60", draw(state, 200, 60));
    approve("board-ascii-80x24", draw(state, 80, 24).ascii());
  }

  @Test
  void theOrderLineIsAsApproved() throws IOException {
    State state = Sample.running(1300).sighting(Sample.outside(1300));
    approve("order-open-80x24", draw(typed(state, "bu tr"), 80, 24));
    approve("order-wrong-80x24", draw(typed(state, "chekman shut"), 80, 24));
    approve("order-short-80x24", draw(typed(state, "xx"), 80, 24));
    Event tab = new Event.Pressed(Key.of(Key.Kind.TAB));
    State listed = Reaction.react(ground, typed(state, "checkman shut "), tab).state();
    approve("order-listed-80x24", draw(listed, 80, 24));
  }

  @Test
  void theSheetIsAsApproved() throws IOException {
    List<String> sheet = List.of("DRILL - score sheet", "", "Points", "  38 of 100: FAIL.");
    approve("sheet-80x24", draw(Sample.running(1300).over(sheet), 80, 24));
  }

  @ParameterizedTest
  @EnumSource(Stage.class)
  void everySizeGivesThatManyRowsOfThatWidthAndSaysDrill(Stage stage) {
    State state = typed(Sample.running(1300), "burnerman").at(stage);
    for (int width : new int[] {1, 5, 20, 79, 80, 81, 100, 120, 177, 200}) {
      for (int height : new int[] {1, 2, 5, 23, 24, 25, 40, 60}) {
        Frame frame = draw(state, width, height);
        assertThat(frame.rows()).hasSize(height);
        assertThat(frame.rows()).allMatch(r -> r.text().length() == width);
        assertThat(frame.cursorColumn()).isBetween(0, width - 1);
        assertThat(frame.rows().get(0).text()).startsWith("DRILL".substring(0, Math.min(5, width)));
        assertThat(frame.ascii().rows()).allMatch(r -> r.text().chars().allMatch(c -> c < 0x80));
      }
    }
  }

  @Test
  void hostileTextIsDrawnHarmless() {
    Sighting hostile = new Sighting(1, "\u001b[2Jdeck", false, "\u0007 air", List.of(), List.of());
    State state = Sample.running(1).sighting(hostile).noting("a\u001b]0;x\u0007 日 \u202e");
    draw(state, 80, 24).rows().stream()
        .flatMapToInt(r -> r.text().chars())
        .forEach(c -> assertThat(Character.isISOControl(c) || c == 0x202E).isFalse());
  }

  @Test
  void theSameStateGivesTheSameFrame() {
    assertThat(draw(Sample.running(1300), 80, 24)).isEqualTo(draw(Sample.running(1300), 80, 24));
  }

  @Test
  void theHelpFitsTheSmallestScreen() {
    State help = Sample.running(1).at(Stage.HELP);
    assertThat(ground.pages().of(help).hasMore(help)).isFalse();
  }

  @Test
  void everyCautionAndTheBriefFitTheSmallestScreen() {
    for (int i = 0; i < ground.pages().cautions(); i++) {
      State caution = State.first(Mode.PRACTICE).page(i);
      assertThat(ground.pages().of(caution).hasMore(caution)).as("caution %d", i).isFalse();
    }
    State brief = State.first(Mode.PRACTICE).at(Stage.BRIEF);
    assertThat(ground.pages().of(brief).hasMore(brief)).isFalse();
  }

  private Frame draw(State state, int width, int height) {
    return painting.draw(state, new Size(width, height));
  }

  private static void approve(String name, Frame frame) throws IOException {
    Path golden = Path.of("src/test/resources/frames", name + ".txt");
    String text = FrameText.of(frame);
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(golden, text);
    }
    assertThat(text).as(name).isEqualTo(Files.readString(golden));
  }
}
