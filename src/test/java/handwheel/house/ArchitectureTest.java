package handwheel.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Holds the program to every {@link Rule}; the classes are read once for all of them. */
final class ArchitectureTest {
  /**
   * How many classes the rules saw when this was last looked at, package-info left out. Raise it as
   * the program grows: an import that finds little makes every rule pass.
   */
  private static final int CLASSES_AT_LEAST = 7;

  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("handwheel");

  @ParameterizedTest
  @EnumSource
  void holds(Rule rule) {
    assertThat(rule.breaches(PROGRAM)).as(rule.name()).isEmpty();
  }

  @Test
  void sawEnoughClasses() {
    assertThat(PROGRAM.stream().filter(c -> !c.getSimpleName().equals("package-info")).count())
        .isGreaterThanOrEqualTo(CLASSES_AT_LEAST);
  }
}
