package handwheel.app;

import com.google.gson.stream.JsonWriter;
import handwheel.debrief.Scripts;
import handwheel.diagnostics.Finding;
import handwheel.proof.Prover;
import handwheel.proof.Verdict;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** {@code check SCRIPT...}: reads scripts and says everything that is wrong with them. */
final class CheckCommand implements Command {
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
    return "SCRIPT... [--quick] [--json] [--against]\n"
        + "      says all that is wrong with scripts; without --quick plays them too and writes\n"
        + "      the proof without which there is no scored run;\n"
        + "      --against: says the right orders of each script in every other, and whether a\n"
        + "      critical act fails";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage, IOException {
    Arguments args = Arguments.of(words, List.of(), List.of("--quick", "--json", "--against"));
    if (args.rest().isEmpty()) {
      throw new Usage("at least one script is needed.");
    }
    if (args.has("--against")) {
      return against(args.rest(), console);
    }
    List<Finding> all = new ArrayList<>();
    List<Finding> played = new ArrayList<>();
    for (String name : args.rest()) {
      Path file = drills.file(name);
      Drills.Loaded loaded = drills.load(file);
      all.addAll(loaded.findings());
      boolean isRead = loaded.findings().stream().noneMatch(Finding::stopsTheDrill);
      Optional<Scripts.Found> found =
          loaded.found().filter(f -> isRead && !f.casualty().witness().isEmpty());
      if (found.isPresent() && !args.has("--quick")) {
        played.addAll(proved(file, found.get(), console));
      }
    }
    boolean isUnderstood = all.stream().noneMatch(Finding::stopsTheDrill);
    all.addAll(played);
    if (args.has("--json")) {
      console.result(json(all));
    } else {
      Told.of(all).forEach(console::message);
      console.result(args.rest().size() + " read, " + all.size() + " findings");
    }
    if (!isUnderstood) {
      return Exit.NOT_UNDERSTOOD;
    }
    return all.stream().anyMatch(Finding::stopsTheDrill) ? Exit.NO : Exit.YES;
  }

  private int against(List<String> names, Console console) throws Usage, IOException {
    List<Scripts.Found> found = new ArrayList<>();
    for (String name : names) {
      Drills.Loaded loaded = drills.load(drills.file(name));
      if (console.stops(loaded.findings())) {
        return Exit.NOT_UNDERSTOOD;
      }
      loaded.found().filter(f -> !f.casualty().witness().isEmpty()).ifPresent(found::add);
    }
    CrossTable.of(found).text().forEach(console::result);
    return Exit.YES;
  }

  private static List<Finding> proved(Path file, Scripts.Found found, Console console)
      throws IOException {
    Workbench workbench = new Workbench(found.casualty(), found.ship());
    Verdict verdict = Prover.prove(found.casualty(), found.ship(), workbench);
    if (verdict.isSound()) {
      Proofs.write(file, found, verdict);
      console.message(
          found.casualty().id()
              + ": the witness earns all points with "
              + verdict.seeds()
              + " seeds; "
              + verdict.mutants()
              + " mutants score as they must; "
              + verdict.cheapTries()
              + " cheap tries, none passes. Proof: "
              + Proofs.file(file));
    }
    return verdict.findings();
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
