package handwheel.app;

import com.google.gson.stream.JsonWriter;
import handwheel.drill.Rehearsal;
import handwheel.scoring.Charge;
import handwheel.scoring.ScoreSheet;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;

/** A score as one JSON object. */
final class ScoreJson {
  private ScoreJson() {}

  static String of(Rehearsal.Setup setup, ScoreSheet sheet, Optional<Path> record, String digest) {
    StringWriter text = new StringWriter();
    try (JsonWriter json = new JsonWriter(text)) {
      json.beginObject();
      json.name("drill").value(setup.casualty().id());
      json.name("seed").value(setup.seed());
      json.name("score").value(sheet.points());
      json.name("verdict").value(sheet.isPass() ? "pass" : "fail");
      json.name("lost").beginArray();
      for (Charge c : sheet.charges()) {
        charge(json, c);
      }
      json.endArray();
      json.name("record");
      if (record.isPresent()) {
        json.value(record.get().toString());
      } else {
        json.nullValue();
      }
      json.name("digest").value(digest);
      json.endObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  static void charge(JsonWriter json, Charge c) throws IOException {
    json.beginObject();
    json.name("points").value(c.points());
    json.name("class").value(c.type().word());
    json.name("step").value(c.step());
    json.name("tick").value(c.tick());
    json.name("why").value(c.why());
    json.name("basis").value(c.basis().word());
    json.endObject();
  }
}
