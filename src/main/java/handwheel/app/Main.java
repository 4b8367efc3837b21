package handwheel.app;

import handwheel.diagnostics.NearestWords;
import handwheel.drill.Engine;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The program. */
public final class Main {
  private Main() {}

  /**
   * Runs one command and leaves with its exit code.
   *
   * @param args the command and its words
   */
  public static void main(String[] args) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(List.of(args), new Console(out, err)));
  }

  /** Runs one command; never throws. */
  static int run(List<String> args, Console console) {
    List<Command> commands = commands(Drills.here());
    if (args.isEmpty() || args.contains("--help") || args.get(0).equals("help")) {
      help(commands, console);
      return Exit.YES;
    }
    if (args.get(0).equals("--version")) {
      console.result("Handwheel " + Engine.VERSION);
      return Exit.YES;
    }
    Optional<Command> command =
        commands.stream().filter(c -> c.name().equals(args.get(0))).findFirst();
    if (command.isEmpty()) {
      List<String> names = commands.stream().map(Command::name).toList();
      console.message(
          "`" + args.get(0) + "` is no command. " + NearestWords.offer(args.get(0), names));
      return Exit.NOT_UNDERSTOOD;
    }
    return guarded(command.get(), args.subList(1, args.size()), console);
  }

  private static int guarded(Command command, List<String> words, Console console) {
    try {
      return command.run(words, console);
    } catch (Usage e) {
      console.message("handwheel " + command.name() + ": " + e.sentence());
      return Exit.NOT_UNDERSTOOD;
    } catch (InvalidPathException e) {
      console.message("handwheel " + command.name() + ": `" + e.getInput() + "` is no file name.");
      return Exit.NOT_UNDERSTOOD;
    } catch (IOException | UncheckedIOException e) {
      console.message("handwheel " + command.name() + ": a file failed: " + e.getMessage());
      return Exit.NOT_UNDERSTOOD;
    } catch (RuntimeException e) {
      StackTraceElement[] trace = e.getStackTrace();
      console.message("handwheel " + command.name() + ": this is a fault of the program: " + e);
      Arrays.stream(trace).limit(3).forEach(t -> console.message("    at " + t));
      return Exit.OUR_FAULT;
    }
  }

  private static List<Command> commands(Drills drills) {
    return List.of(
        new DrillCommand(drills),
        new RehearseCommand(drills),
        new CheckCommand(drills),
        new DebriefCommand(drills),
        new VerifyCommand(drills),
        new ListCommand(drills),
        new KeysCommand(),
        new BoardCommand(drills, System.in),
        new CardCommand(drills),
        new NewCommand(drills),
        new SchemaCommand());
  }

  private static void help(List<Command> commands, Console console) {
    console.result(
        "Handwheel: emergency casualty drills for a hand-operated steam fire room.\n"
            + "A trainer teaches. The ship's own procedures, local codes and licensed practice"
            + " decide.\n\nhandwheel COMMAND");
    commands.forEach(c -> console.result("  " + c.name() + " " + c.summary()));
    console.result(
        "\nExit codes: 0 yes, 1 no (failed, unsound, does not verify), 2 input not understood,\n"
            + "3 interrupted, 4 a fault of the program.");
  }
}
