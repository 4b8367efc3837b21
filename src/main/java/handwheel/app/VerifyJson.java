package handwheel.app;

import com.google.gson.stream.JsonWriter;
import handwheel.debrief.Trouble;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;

/** What verifying found, as one JSON text for a program. */
final class VerifyJson implements VerifyReport {
  private final List<Row> rows = new ArrayList<>();
  private final List<Book> books = new ArrayList<>();

  private record Book(String file, String kind, String text) {}

  @Override
  public void record(Row row) {
    rows.add(row);
  }

  @Override
  public void book(String file, String kind, String text) {
    books.add(new Book(file, kind, text));
  }

  @Override
  public boolean end(Console console) throws IOException {
    boolean holds = books.isEmpty() && rows.stream().allMatch(r -> r.troubles().isEmpty());
    StringWriter text = new StringWriter();
    try (JsonWriter json = new JsonWriter(text)) {
      json.beginObject().name("holds").value(holds);
      json.name("records").beginArray();
      for (Row row : rows) {
        write(row, json);
      }
      json.endArray().name("books").beginArray();
      for (Book b : books) {
        json.beginObject().name("file").value(b.file()).name("kind").value(b.kind());
        json.name("text").value(b.text()).endObject();
      }
      json.endArray().endObject();
    }
    console.result(text.toString());
    return holds;
  }

  private static void write(Row row, JsonWriter json) throws IOException {
    json.beginObject().name("record").value(row.record());
    json.name("holds").value(row.troubles().isEmpty());
    json.name("key").value(row.key());
    json.name("ledger").value(row.hasLedger());
    json.name("digest").value(row.digest());
    json.name("troubles").beginArray();
    for (Trouble t : row.troubles()) {
      json.beginObject().name("kind").value(t.kind().word());
      json.name("text").value(t.text()).endObject();
    }
    json.endArray().endObject();
  }
}
