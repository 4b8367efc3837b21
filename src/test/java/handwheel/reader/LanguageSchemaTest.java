package handwheel.reader;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import handwheel.casualty.Casualty;
import handwheel.diagnostics.Finding;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The schema for editors, driven by a schema library (json-schema-validator, JSON Schema draft
 * 2020-12). Plain texts become numbers and booleans as an editor makes them of YAML 1.2.2 (section
 * 10.3, the core schema).
 */
final class LanguageSchemaTest {
  private static final Path FOLDER = Path.of("docs/scripts");
  private static final JsonSchemaFactory LIBRARY =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
  private static final JsonSchema SCRIPT = schema("script");

  /** What an editor must see without knowing the ship; the rest is said by the program alone. */
  private static final List<FindingId> STRUCTURAL =
      List.of(
          FindingId.UNKNOWN_KEY,
          FindingId.MISSING_KEY,
          FindingId.CONFLICTING_KEYS,
          FindingId.WRONG_FORM,
          FindingId.MISSING_VALUE,
          FindingId.EMPTY_TEXT,
          FindingId.UNKNOWN_WORD,
          FindingId.NOT_TRUE_OR_FALSE,
          FindingId.NOT_A_WHOLE_NUMBER,
          FindingId.NOT_POINTS,
          FindingId.NOT_A_WINDOW,
          FindingId.NOT_A_RULE,
          FindingId.BAD_ID,
          FindingId.COMMA_LIST,
          FindingId.WRONG_HEADER,
          FindingId.UNKNOWN_VERSION);

  private static JsonSchema schema(String kind) {
    return LIBRARY.getSchema(LanguageSchema.of(kind));
  }

  @ParameterizedTest
  @ValueSource(strings = {"script", "ship", "condition", "plant"})
  void shippedSchemaIsTheOneTheReaderGives(String kind) {
    Path file = FOLDER.resolve(kind + ".schema.json");
    if (Boolean.getBoolean("golden.update")) {
      write(file, LanguageSchema.of(kind));
    }
    assertThat(TestFiles.text(file)).isEqualTo(LanguageSchema.of(kind));
  }

  @ParameterizedTest
  @ValueSource(strings = {"script", "ship", "condition", "plant"})
  void schemaIsOneBy202012(String kind) throws IOException {
    JsonSchema meta = LIBRARY.getSchema(SchemaLocation.of(SpecVersion.VersionFlag.V202012.getId()));
    JsonNode schema =
        new com.fasterxml.jackson.databind.ObjectMapper().readTree(LanguageSchema.of(kind));

    assertThat(meta.validate(schema)).isEmpty();
  }

  static Stream<Path> good() {
    return Stream.concat(
        TestFiles.files(TestFiles.DRILLS, ".yaml").stream(),
        TestFiles.files(TestFiles.GOOD, ".yaml").stream());
  }

  @ParameterizedTest
  @MethodSource("good")
  void goodScriptsAreValid(Path script) {
    assertThat(SCRIPT.validate(json(script).orElseThrow())).isEmpty();
  }

  static Stream<Path> ships() {
    return Stream.of(TestFiles.ALDER_REACH, TestFiles.SMALL_SHIP)
        .flatMap(f -> TestFiles.files(f, ".yaml").stream());
  }

  @ParameterizedTest
  @MethodSource("ships")
  void shipFilesAreValid(Path file) {
    String text = TestFiles.text(file).replaceAll("(?m)^#.*\\R", "").strip();
    String kind = text.lines().findFirst().orElseThrow().split(" ", -1)[1];

    assertThat(schema(kind).validate(json(file).orElseThrow())).isEmpty();
  }

  static Stream<Path> structurallyBad() {
    return TestFiles.files(TestFiles.BAD, ".yaml").stream()
        .filter(f -> json(f).isPresent() && isStructural(f));
  }

  private static boolean isStructural(Path script) {
    Read<Casualty> read =
        ScriptReader.read("bad.yaml", TestFiles.bytes(script), TestFiles.smallShip());
    List<String> ids = STRUCTURAL.stream().map(FindingId::id).toList();
    return read.findings().stream().map(Finding::id).anyMatch(ids::contains);
  }

  @ParameterizedTest
  @MethodSource("structurallyBad")
  void whatAnEditorCanSeeItSees(Path script) {
    assertThat(SCRIPT.validate(json(script).orElseThrow())).isNotEmpty();
  }

  @Test
  void enoughBadScriptsAreSeenByAnEditor() {
    assertThat(structurallyBad()).hasSizeGreaterThan(20);
  }

  /** But for conditions, which are written by a machine. */
  @Test
  void everyShippedFileNamesItsSchema() {
    Stream.concat(good(), ships())
        .filter(
            f -> f.startsWith("drills") && !TestFiles.text(f).startsWith("handwheel: condition"))
        .forEach(
            f -> {
              String first = TestFiles.text(f).lines().findFirst().orElseThrow();
              assertThat(first).as(f.toString()).startsWith("# yaml-language-server: $schema=");
              Path schema = f.resolveSibling(first.substring(first.indexOf('=') + 1)).normalize();
              assertThat(schema).exists();
              assertThat(schema.getParent()).isEqualTo(FOLDER);
            });
  }

  /** Returns a file as an editor sees it; empty if it is no YAML at all. */
  private static Optional<JsonNode> json(Path file) {
    return YamlText.compose(file.toString(), TestFiles.bytes(file), new Findings())
        .map(LanguageSchemaTest::json);
  }

  private static JsonNode json(YamlNode node) {
    JsonNodeFactory make = JsonNodeFactory.instance;
    if (node instanceof YamlNode.Mapping mapping) {
      var object = make.objectNode();
      mapping.entries().forEach(e -> object.set(e.key().text(), json(e.value())));
      return object;
    }
    if (node instanceof YamlNode.Items items) {
      var array = make.arrayNode();
      items.items().forEach(i -> array.add(json(i)));
      return array;
    }
    return node instanceof YamlNode.Scalar scalar ? json(scalar) : NullNode.instance;
  }

  private static JsonNode json(YamlNode.Scalar scalar) {
    JsonNodeFactory make = JsonNodeFactory.instance;
    String text = scalar.text();
    if (scalar.isQuoted()) {
      return make.textNode(text);
    }
    if (text.isEmpty() || text.matches("null|Null|NULL|~")) {
      return NullNode.instance;
    }
    if (text.matches("true|True|TRUE|false|False|FALSE")) {
      return BooleanNode.valueOf(text.toLowerCase(java.util.Locale.ROOT).equals("true"));
    }
    if (text.matches("[-+]?[0-9]{1,18}")) {
      return make.numberNode(Long.parseLong(text));
    }
    return text.matches("[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]{1,3})?")
        ? make.numberNode(Double.parseDouble(text))
        : make.textNode(text);
  }

  private static void write(Path file, String text) {
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
