package handwheel.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Shows that each {@link Rule} fails when it is broken, and that what it allows passes: small
 * programs are compiled and judged by the same rules as the real one.
 */
final class RulesBiteTest {
  @TempDir static Path folder;

  private static JavaClasses broken;

  @BeforeAll
  static void compile() throws IOException {
    List<String> arguments = new ArrayList<>(List.of("-proc:none", "-nowarn"));
    arguments.addAll(List.of("-XDstringConcat=inline", "-d", folder.resolve("out").toString()));
    arguments.addAll(List.of("-cp", System.getProperty("java.class.path")));
    for (Bite bite : Bite.all()) {
      for (var source : bite.sources().entrySet()) {
        arguments.add(write(source.getKey(), source.getValue()));
      }
    }
    for (String name : Packages.MAY_USE.keySet()) {
      String mark = "@org.jspecify.annotations.NullMarked package handwheel." + name + ";";
      arguments.add(write("handwheel/" + name + "/package-info.java", mark));
    }
    int exit =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, null, arguments.toArray(String[]::new));
    assertThat(exit).as("exit code of the compiler").isZero();
    broken = new ClassFileImporter().importPath(folder.resolve("out").resolve("handwheel"));
  }

  private static String write(String path, String text) throws IOException {
    Path file = folder.resolve("in").resolve(path);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text, StandardCharsets.UTF_8).toString();
  }

  static Stream<Bite> bites() {
    return Bite.all().stream();
  }

  @ParameterizedTest
  @MethodSource("bites")
  void breaksWhatItSaysAndNothingElse(Bite bite) {
    JavaClasses program =
        broken.that(describe("belong to one program", type -> bite.owns(type.getName())));
    assertThat(program).anyMatch(type -> bite.owns(type.getName()));
    assertThat(Arrays.stream(Rule.values()).filter(rule -> !rule.breaches(program).isEmpty()))
        .extracting(Rule::name)
        .containsExactlyInAnyOrderElementsOf(bite.rules());
  }

  @ParameterizedTest
  @EnumSource
  void isBrokenBySomeProgram(Rule rule) {
    assertThat(Bite.all()).anyMatch(bite -> bite.rules().contains(rule.name()));
  }

  /** A misspelt name would ban nothing. */
  @Test
  void everyBannedNameExists() {
    assertThat(Bans.all().stream().flatMap(ban -> ban.names().stream()))
        .isNotEmpty()
        .allMatch(name -> name.startsWith("*.") || exists(name));
  }

  private static boolean exists(String name) {
    if (name.endsWith(".*")) {
      String packageName = name.substring(0, name.length() - 2);
      return ModuleLayer.boot().modules().stream()
          .anyMatch(module -> module.getPackages().contains(packageName));
    }
    return classNamed(name).isPresent() || hasMember(name);
  }

  private static boolean hasMember(String name) {
    String member = name.substring(name.lastIndexOf('.') + 1);
    return classNamed(name.substring(0, name.lastIndexOf('.')))
        .map(owner -> member.equals("<init>") || declaresOrInherits(owner, member))
        .orElse(false);
  }

  private static boolean declaresOrInherits(Class<?> owner, String member) {
    return Stream.concat(Arrays.stream(owner.getMethods()), Arrays.stream(owner.getFields()))
        .anyMatch(found -> found.getName().equals(member));
  }

  private static Optional<Class<?>> classNamed(String name) {
    try {
      return Optional.of(Class.forName(name, false, null));
    } catch (ClassNotFoundException absent) {
      return Optional.empty();
    }
  }
}
