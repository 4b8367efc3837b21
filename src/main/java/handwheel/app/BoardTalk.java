package handwheel.app;

import handwheel.board.CandidatePage;
import handwheel.diagnostics.NearestWords;
import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes the lines of whoever sits at the board, one act a line. */
final class BoardTalk {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  private final Console console;
  private final BufferedReader lines;
  private final Map<String, Act> acts = new TreeMap<>();
  private final BoardActs reviewing;
  private final BoardPapers papers;
  private final BoardMinutes minutes;

  /** One act; returns whether the answer is yes. */
  @FunctionalInterface
  interface Act {
    boolean run(List<String> words) throws Usage, IOException;
  }

  BoardTalk(BoardRoom room, Seat seat, BufferedReader lines, Console console) {
    this.console = console;
    this.lines = lines;
    this.reviewing = new BoardActs(room, seat, console);
    this.papers = new BoardPapers(room, seat, console);
    this.minutes = new BoardMinutes(room, seat, this::ask, console);
    acts.put("list", reviewing::list);
    acts.put("page", reviewing::page);
    acts.put("show", reviewing::show);
    acts.put("replay", reviewing::replay);
    acts.put("compare", reviewing::compare);
    acts.put("figures", reviewing::figures);
    acts.put("agreement", reviewing::agreement);
    acts.put("ledger", reviewing::ledger);
    acts.put("mark", minutes::mark);
    acts.put("statement", minutes::statement);
    acts.put("oral", minutes::oral);
    acts.put("qualifier", minutes::qualifier);
    acts.put("decide", minutes::decide);
    acts.put("note", minutes::note);
    acts.put("erase", minutes::erase);
    acts.put("pack", papers::pack);
    acts.put("csv", papers::csv);
    acts.put("export", papers::export);
    acts.put("import", papers::importFolder);
    acts.put("index", papers::index);
    acts.put("help", words -> help());
  }

  /** Runs one act given on the command line. */
  int one(List<String> words) throws Usage, IOException {
    Act act = acts.get(words.get(0));
    if (act == null) {
      throw new Usage(
          "`"
              + words.get(0)
              + "` is nothing one can say here; `help` lists what is. "
              + NearestWords.offer(words.get(0), acts.keySet()));
    }
    return act.run(words.subList(1, words.size())) ? Exit.YES : Exit.NO;
  }

  /** Runs lines until `quit` or their end. A line that is not understood ends nothing. */
  int all() throws IOException {
    console.result("DRILL RECORDS. " + String.join("\n", CandidatePage.CAUTIONS));
    help();
    int exit = Exit.YES;
    for (String line = next("board> "); line != null; line = next("board> ")) {
      List<String> words = words(line);
      if (words.equals(List.of("quit"))) {
        return exit;
      }
      if (!words.isEmpty()) {
        exit = guarded(words);
      }
    }
    return exit;
  }

  private int guarded(List<String> words) {
    try {
      return one(words);
    } catch (Usage e) {
      console.message(e.sentence());
      return Exit.NOT_UNDERSTOOD;
    } catch (IOException e) {
      console.message("A file failed: " + e.getMessage() + ".");
      return Exit.NOT_UNDERSTOOD;
    }
  }

  private String ask(String question) throws IOException {
    String answer = next(question + " ");
    return answer == null ? "" : answer.strip();
  }

  private @org.jspecify.annotations.Nullable String next(String prompt) throws IOException {
    console.out().print(prompt);
    console.out().flush();
    String line = lines.readLine();
    console.out().println();
    return line;
  }

  static List<String> words(String line) {
    List<String> words = new ArrayList<>();
    Matcher m = WORD.matcher(line);
    while (m.find()) {
      words.add(m.group(1) == null ? m.group(2) : m.group(1));
    }
    return words;
  }

  private boolean help() {
    console.result(
        "\nWhat you can say (names with blanks in \"quotes\"):\n"
            + "  list [by NAME] [drill ID] [from DAY] [to DAY] [verdict pass|fail] [most N]\n"
            + "  page NAME                       all about a candidate\n"
            + "  replay RUN [pace X] [every S]   what he could see beside what was\n"
            + "  mark RUN pass|fail [NOTE]       your mark; before it no score is shown\n"
            + "  show RUN                        the machine's score sheet\n"
            + "  compare RUN RUN                 two runs act by act\n"
            + "  figures DRILL | agreement DRILL | ledger\n"
            + "  statement NAME TEXT | oral NAME MARK QUESTION\n"
            + "  qualifier NAME KEY SCOPE UNTIL  names who may decide: DRILL or any, last day\n"
            + "  decide NAME                     asks for all it needs, and signs\n"
            + "  note RUN void|abandoned|missing REASON\n"
            + "  pack NAME FILE.html | csv runs|items FILE | export DIR | import DIR\n"
            + "  index | erase PSEUDONYM | help | quit");
    return true;
  }
}
