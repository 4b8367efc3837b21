package handwheel.app;

import com.google.gson.stream.JsonWriter;
import handwheel.debrief.Scored;
import handwheel.debrief.Scripts;
import handwheel.diagnostics.Finding;
import handwheel.drill.Mode;
import handwheel.drill.Rehearsal;
import handwheel.proof.WitnessPlayer;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** {@code check SCRIPT...}: reads scripts and says everything that is wrong with them. */
final class CheckCommand implements Command {
  private static final int SEEDS = 10;

  private final Drills drills;

  CheckCommand(Drills drills) {
    this.drills = drills;
  }

  @Override
  public String name() {
    return "check";
  }

  @Override
  public String summary() {
    return "SCRIPT... [--quick] [--json]\n"
        + "      says all that is wrong with scripts; without --quick plays the witness too";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    Arguments args = Arguments.of(words, List.of(), List.of("--quick", "--json"));
    if (args.rest().isEmpty()) {
      throw new Usage("at least one script is needed.");
    }
    List<Finding> all = new ArrayList<>();
    boolean isProved = true;
    for (String name : args.rest()) {
      Drills.Loaded loaded = drills.load(drills.file(name));
      all.addAll(loaded.findings());
      boolean isRead = loaded.findings().stream().noneMatch(Finding::stopsTheDrill);
      if (isRead && loaded.found().isPresent() && !args.has("--quick")) {
        isProved &= isPlayedRight(loaded.found().get(), console);
      }
    }
    if (args.has("--json")) {
      console.result(json(all));
    } else {
      all.forEach(f -> console.message(f.text()));
      console.result(args.rest().size() + " read, " + all.size() + " findings");
    }
    if (all.stream().anyMatch(Finding::stopsTheDrill)) {
      return Exit.NOT_UNDERSTOOD;
    }
    return isProved ? Exit.YES : Exit.NO;
  }

  private static boolean isPlayedRight(Scripts.Found found, Console console) {
    boolean isRight = true;
    for (long seed = 1; seed <= SEEDS; seed++) {
      Rehearsal.Setup setup =
          new Rehearsal.Setup(found.ship(), found.casualty(), seed, Mode.PRACTICE);
      WitnessPlayer player = new WitnessPlayer(found.casualty(), found.ship());
      Scored scored = Scored.play(setup, player, entry -> {}, session -> {});
      if (scored.sheet().points() != 100 || !scored.sheet().isPass()) {
        isRight = false;
        console.message(
            found.casualty().id()
                + ": the witness scores "
                + scored.sheet().points()
                + " with seed "
                + seed
                + "; see `rehearse "
                + found.casualty().id()
                + " --seed "
                + seed
                + "`.");
      }
    }
    return isRight;
  }

  private static String json(List<Finding> findings) throws IOException {
    StringWriter text = new StringWriter();
    try (JsonWriter json = new JsonWriter(text)) {
      json.beginObject().name("findings").beginArray();
      for (Finding f : findings) {
        json.beginObject();
        json.name("id").value(f.id());
        json.name("severity").value(f.severity().name().toLowerCase(Locale.ROOT));
        json.name("file").value(f.spot().file());
        json.name("line").value(f.spot().line());
        json.name("column").value(f.spot().column());
        json.name("message").value(f.message());
        json.name("mend").value(f.mend());
        json.endObject();
      }
      json.endArray().endObject();
    }
    return text.toString();
  }
}
