package handwheel.app;

import com.google.gson.stream.JsonWriter;
import handwheel.debrief.Cost;
import handwheel.debrief.Debrief;
import handwheel.debrief.Outcome;
import handwheel.debrief.OwnLines;
import handwheel.logbook.Entry;
import handwheel.scoring.Charge;
import handwheel.scoring.CriticalAct;
import handwheel.scoring.ScoreSheet;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;

/** A debrief as one JSON object. */
final class DebriefJson {
  private final JsonWriter json;

  private DebriefJson(JsonWriter json) {
    this.json = json;
  }

  static String of(Debrief debrief) {
    StringWriter text = new StringWriter();
    try (JsonWriter json = new JsonWriter(text)) {
      new DebriefJson(json).write(debrief);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void write(Debrief debrief) throws IOException {
    Entry.Run run = (Entry.Run) debrief.request().entries().get(0);
    ScoreSheet sheet = debrief.sheet();
    json.beginObject();
    json.name("drill").value(run.script());
    json.name("seed").value(run.seed());
    json.name("holds").value(debrief.request().troubles().isEmpty());
    texts("troubles", debrief.request().troubles());
    texts("own", debrief.request().own().map(OwnLines::lines).orElse(List.of()));
    json.name("turned").value(debrief.lesson().turned());
    json.name("next").value(debrief.lesson().next());
    json.name("right").value(debrief.lesson().right());
    texts("behaviours", debrief.lesson().behaviours());
    json.name("score").value(sheet.points());
    json.name("verdict").value(sheet.isPass() ? "pass" : "fail");
    critical(sheet);
    json.name("due").beginObject();
    json.name("day").value(debrief.request().day().map(LocalDate::toString).orElse(""));
    json.name("orderDays").value(debrief.due().orderDays());
    json.name("speedDays").value(debrief.due().speedDays());
    json.name("currencyDays").value(debrief.due().currencyDays());
    json.endObject();
    json.name("lost").beginArray();
    for (Charge c : sheet.charges()) {
      ScoreJson.charge(json, c);
    }
    json.endArray();
    if (debrief.simulated().isPresent()) {
      simulated(debrief.simulated().get());
    }
    json.endObject();
  }

  private void texts(String name, List<String> texts) throws IOException {
    json.name(name).beginArray();
    for (String text : texts) {
      json.value(text);
    }
    json.endArray();
  }

  private void critical(ScoreSheet sheet) throws IOException {
    json.name("critical").beginArray();
    for (CriticalAct c : sheet.critical()) {
      json.beginObject();
      json.name("id").value(c.id());
      json.name("standing").value(c.standing().words());
      json.endObject();
    }
    json.endArray();
  }

  private void simulated(Debrief.Simulated simulated) throws IOException {
    json.name("outcome");
    outcome(simulated.outcome());
    json.name("costs").beginArray();
    for (Cost c : simulated.costs()) {
      json.beginObject();
      json.name("step").value(c.charge().step());
      json.name("class").value(c.charge().type().word());
      json.name("enough").value(c.isEnough());
      json.name("mended");
      outcome(c.mended());
      json.endObject();
    }
    json.endArray();
    json.name("allMended");
    outcome(simulated.allMended());
  }

  private void outcome(Outcome o) throws IOException {
    json.beginObject();
    json.name("hurt").value(o.hurt());
    json.name("down").value(o.down());
    json.name("superheaterMetalK").value(Math.round(o.superheaterMetalK()));
    json.name("tubeMetalK").value(Math.round(o.tubeMetalK()));
    json.name("lowestLevelMm").value(Math.round(o.lowestLevelM() * 1000));
    json.name("steamIntoRoomKg").value(Math.round(o.steamIntoRoomKg()));
    json.name("withoutSteamTicks").value(o.withoutSteamTicks());
    json.name("points").value(o.points());
    json.endObject();
  }
}
