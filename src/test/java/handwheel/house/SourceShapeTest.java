package handwheel.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds every Java file, tests included, to its shape and tells all breaches at once. */
final class SourceShapeTest {
  private static final String SMALL = "package handwheel.plant; class A { %s }";

  @Test
  void everyFileKeepsTheShape() {
    List<SourceFile> files = SourceFile.below(Path.of("src/main"), Path.of("src/test"));
    List<String> breaches = files.stream().flatMap(file -> breaches(file).stream()).toList();
    assertThat(files).isNotEmpty();
    assertThat(breaches).as(medians(files)).isEmpty();
  }

  private static List<String> breaches(SourceFile file) {
    List<String> all = new ArrayList<>(Syntax.of(file).breaches());
    all.addAll(PlainText.javaBreaches(file.name(), file.text()));
    return all;
  }

  /** For information: what the rules hold is the largest, what a reader feels is the median. */
  private static String medians(List<SourceFile> files) {
    return "Median file "
        + median(files.stream().map(file -> (int) file.text().lines().count()))
        + " lines, median method "
        + median(files.stream().flatMap(file -> Syntax.of(file).methodLines().stream()))
        + " lines";
  }

  private static int median(Stream<Integer> figures) {
    List<Integer> sorted = figures.sorted().toList();
    return sorted.isEmpty() ? 0 : sorted.get(sorted.size() / 2);
  }

  static Stream<Arguments> broken() {
    return Stream.of(
        Arguments.of("501 lines", "// x\n".repeat(501)),
        Arguments.of("1: tab", "class A {\tint a; }"),
        Arguments.of("unfinished", "// TO" + "DO: more"),
        Arguments.of("unfinished", "// FIX" + "ME"),
        Arguments.of("banned", "// The sni" + "pe trips it."),
        Arguments.of("method f has 51 lines", in("void f() {" + "\n".repeat(50) + "}")),
        Arguments.of("has 51 lines", in("@Deprecated\nA() {" + "\n".repeat(49) + "}")),
        Arguments.of("parameters", in("void f(int a, int b, int c, int d, int e, int f) {}")),
        Arguments.of("parameters", in("A(int a, int b, int c, int d, int e, int f) {}")),
        Arguments.of(
            "parameters",
            in("record B() { static void f(int a, int b, int c, int d, int e, int f) {} }")),
        Arguments.of("nesting", in("void f() { if (a) for (;;) while (b) if (c) d(); }")),
        Arguments.of(
            "nesting",
            in("void f() { try { do switch (a) { case 1: if (b) {} } while (c); } finally {} }")),
        Arguments.of("nesting", in("int f = g(() -> { if (a) if (b) if (c) if (d) return; });")),
        Arguments.of("nesting", in("void f() { if (a) {} else if (b) for (;;) if (c) if (d) {} }")),
        Arguments.of("does not run", in("@Disabled void f() {}")),
        Arguments.of("does not run", in("@org.junit.jupiter.api.DisabledOnOs(X) void f() {}")),
        Arguments.of("273.15 outside units", in("double k = 20 + 273.15;")),
        Arguments.of("273.15 outside units", in("float k = 273.15f;")),
        Arguments.of("459.67 outside units", in("double k = 459.670;")));
  }

  @ParameterizedTest
  @MethodSource("broken")
  void tellsABreach(String expected, String text) {
    assertThat(breaches(SourceFile.of("A.java", text)))
        .singleElement()
        .asString()
        .startsWith("A.java:")
        .contains(expected);
  }

  static Stream<String> whole() {
    return Stream.of(
        "// x\n".repeat(500),
        in("void f() {" + "\n".repeat(49) + "}"),
        in("/** Long\n" + "* comment\n".repeat(60) + "*/ void f() {}"),
        in("void f(int a, int b, int c, int d, int e) {}"),
        in("record B(int a, int b, int c, int d, int e, int f, int g) {}"),
        in("record B(int a) { B(int a, int b, int c, int d, int e, int f) { this(a); } }"),
        in("void f() { if (a) for (;;) while (b) c(); if (d) {} }"),
        in("void f() { if (a) {} else if (b) {} else if (c) {} else if (d) {} else {} }"),
        in("void f() { if (a) if (b) if (c) new B() { void g() { if (d) {} } }; }"),
        in("String k = \"273.15\"; double l = 273.16;"),
        "package handwheel.units; class A { double k = 273.15; }");
  }

  @ParameterizedTest
  @MethodSource("whole")
  void letsTheRestPass(String text) {
    assertThat(breaches(SourceFile.of("A.java", text))).isEmpty();
  }

  private static String in(String members) {
    return SMALL.replace("%s", members);
  }
}
