package handwheel.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The board's full screen: answers above, a line below, runs chosen with the arrow keys. */
final class ReviewDeskTest {
  private final List<String> said = new ArrayList<>();
  private final List<String> news = new ArrayList<>();
  private boolean isOver;

  private final ReviewDesk desk =
      new ReviewDesk(
          "records",
          new ReviewDesk.Talk() {
            @Override
            public void say(String line) {
              said.add(line);
            }

            @Override
            public List<String> answered() {
              List<String> taken = List.copyOf(news);
              news.clear();
              return taken;
            }

            @Override
            public String asked() {
              return "board> ";
            }

            @Override
            public boolean isOver() {
              return isOver;
            }
          });

  private void type(String text) {
    text.chars().forEach(c -> desk.press(Key.letter((char) c)));
  }

  private List<String> rows() {
    desk.pass(0);
    return desk.frame(40, 10).rows().stream().map(r -> r.text().stripTrailing()).toList();
  }

  @Test
  void aLineIsSaidAndAnswered() {
    type("list");
    desk.press(Key.of(Key.Kind.ENTER));
    news.add("no runs");

    assertThat(said).containsExactly("list");
    assertThat(rows()).startsWith("DRILL RECORDS  records", "no runs").endsWith("board>");
  }

  @Test
  void aRunIsChosenAndPutIntoTheLine() {
    news.addAll(List.of("Runs", "  1/aaaaaa  2026", "  2/bbbbbb  2026", "2 runs."));
    rows();
    type("mark");
    desk.press(Key.of(Key.Kind.UP));
    desk.press(Key.of(Key.Kind.UP));
    desk.press(Key.of(Key.Kind.TAB));

    assertThat(rows()).endsWith("board> mark 1/aaaaaa");
    desk.press(Key.of(Key.Kind.DOWN));
    desk.press(Key.of(Key.Kind.ESCAPE));
    desk.press(Key.of(Key.Kind.TAB));
    assertThat(rows()).endsWith("board> 2/bbbbbb");
  }

  @Test
  void pagesAreTurnedAndTheEndIsFollowed() {
    IntStream.rangeClosed(1, 30).forEach(i -> news.add("line " + i));
    assertThat(rows()).contains("line 30").doesNotContain("line 20");
    desk.press(Key.of(Key.Kind.PAGE_UP));
    assertThat(rows()).contains("line 20").anyMatch(r -> r.contains("more below"));
    news.add("line 31");
    assertThat(rows()).doesNotContain("line 31");
    desk.press(Key.of(Key.Kind.PAGE_DOWN));
    desk.press(Key.of(Key.Kind.PAGE_DOWN));
    assertThat(rows()).contains("line 31");
  }

  /** Hostile text from a record does nothing to the terminal, and long lines are not lost. */
  @Test
  void longAndHostileLinesAreLaidOut() {
    news.add("x".repeat(30) + " " + "y".repeat(30) + "\u001b[2J");
    List<String> rows = rows();
    assertThat(rows).allMatch(r -> r.length() <= 40).noneMatch(r -> r.contains("\u001b"));
    assertThat(String.join("", rows)).contains("x".repeat(30)).contains("y".repeat(30));
  }

  @Test
  void itIsLeftWithTheTalk() {
    assertThat(desk.isLeft()).isFalse();
    isOver = true;
    desk.pass(0);
    assertThat(desk.isLeft()).isTrue();
  }
}
