package handwheel.app;

import handwheel.board.BoardTrouble;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/**
 * {@code board}: lines in, lines out; the same on a full screen, in a pipe and for a screen reader.
 */
final class BoardCommand implements Command {
  private static final List<String> OPTIONS = List.of("--records", "--me", "--keys");

  private final Drills drills;
  private final InputStream in;

  BoardCommand(Drills drills, InputStream in) {
    this.drills = drills;
    this.in = in;
  }

  @Override
  public String name() {
    return "board";
  }

  @Override
  public String summary() {
    return "[--records DIR] [--me NAME] [--keys DIR] [--lines] [VERB WORDS...]\n"
        + "      reviews records and decides: list, page, mark, show, replay, compare, figures,\n"
        + "      decide, pack and more; without a verb it asks for lines, `help` lists them;\n"
        + "      --lines: no full screen";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    int verb = 0;
    while (verb < words.size() && words.get(verb).startsWith("--")) {
      verb += OPTIONS.contains(words.get(verb)) ? 2 : 1;
    }
    int end = Math.min(verb, words.size());
    Arguments args = Arguments.of(words.subList(0, end), OPTIONS, List.of("--lines"));
    Path folder = args.value("--records").map(Path::of).orElseGet(Records::usualFolder);
    Path keys = args.value("--keys").map(Path::of).orElseGet(KeysCommand::usualFolder);
    BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    List<String> rest = words.subList(end, words.size());
    if (!rest.isEmpty() && rest.get(0).equals("demo")) {
      return new DemoFolder(drills, console).make(folder, rest);
    }
    try (BoardRoom room = BoardRoom.open(folder, drills)) {
      Seat seat = new Seat(folder, keys, args.value("--me"));
      if (rest.isEmpty() && !args.has("--lines") && in == System.in && BoardScreen.isPossible()) {
        return BoardScreen.run(
            folder.toString(), (said, shown) -> new BoardTalk(room, seat, said, shown));
      }
      BoardTalk talk = new BoardTalk(room, seat, lines, console);
      return rest.isEmpty() ? talk.all() : talk.one(rest);
    } catch (BoardTrouble e) {
      console.message(String.valueOf(e.getMessage()));
      return Exit.NOT_UNDERSTOOD;
    }
  }
}
