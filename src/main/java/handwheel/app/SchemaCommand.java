package handwheel.app;

import handwheel.diagnostics.NearestWords;
import handwheel.reader.LanguageSchema;
import java.util.List;

/** {@code schema [KIND]}: prints the language for an editor. */
final class SchemaCommand implements Command {
  @Override
  public String name() {
    return "schema";
  }

  @Override
  public String summary() {
    return "[script|ship|condition|plant]\n"
        + "      prints the JSON Schema of a kind of file, for an editor";
  }

  @Override
  public int run(List<String> words, Console console) throws Usage {
    Arguments args = Arguments.of(words, List.of(), List.of());
    String kind = args.rest().isEmpty() ? "script" : args.only("kind of file");
    if (!LanguageSchema.kinds().contains(kind)) {
      String offer = NearestWords.offer(kind, LanguageSchema.kinds());
      throw new Usage("`" + kind + "` is no kind of file. " + offer);
    }
    console.result(LanguageSchema.of(kind).stripTrailing());
    return Exit.YES;
  }
}
