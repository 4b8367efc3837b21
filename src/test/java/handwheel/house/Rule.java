package handwheel.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.elements.GivenClassesConjunction;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** The rules of the house that compiled classes can show. */
enum Rule {
  EACH_PACKAGE_USES_ONLY_WHAT_IT_MAY(
      classes().should(condition("use only what the table allows", Packages::breaches))),

  NO_CYCLES(slices().matching("handwheel.(*)..").should().beFreeOfCycles()),

  SAME_INPUTS_GIVE_SAME_BYTES_BELOW_THE_FACES(
      outside("screen", "terminal", "app").should(Ban.none(Bans.DETERMINISM))),

  CHANCE_IS_SEEDED(outside("terminal", "archive", "app").should(Ban.none(Bans.RANDOM))),

  ONLY_APP_READS_A_CLOCK(outside("app").should(Ban.none(Bans.CLOCK))),

  ONLY_THE_SHELL_HAS_THREADS(outside("terminal", "archive", "app").should(Ban.none(Bans.THREADS))),

  ONLY_THE_SHELL_AND_THE_BOARD_OPEN_FILES(
      outside("terminal", "archive", "board", "app").should(Ban.none(Bans.FILES))),

  NO_DEFAULT_LOCALE_ZONE_OR_CHARSET(classes().should(Ban.none(Bans.LOCALE))),

  NO_FIGURES_AS_TEXT_IN_WHAT_IS_HASHED(
      inside("logbook", "drill", "scoring").should(Ban.none(Bans.FIGURES))),

  NO_POW_IN_THE_TICK(inside("plant", "ship", "drill").should(Ban.none(Bans.TICK))),

  ONLY_APP_AND_TERMINAL_TALK_TO_THE_PERSON(
      outside("terminal", "app").should(Ban.none(Bans.SPEECH))),

  ONLY_APP_ENDS_THE_PROGRAM(outside("app").should(Ban.none(Bans.END))),

  ONLY_APP_HAS_MAIN(
      methods()
          .that(DescribedPredicate.describe("are main methods", Rule::isMain))
          .should()
          .beDeclaredInClassesThat()
          .resideInAPackage("handwheel.app")),

  NAMES_SAY_WHAT_A_THING_IS(noClasses().should().haveNameMatching(".*(Manager|Helper|Util)s?")),

  EVERY_PACKAGE_IS_NULL_MARKED(
      classes().should(condition("be in a null-marked package", Packages::unmarked))),

  CLASSES_ARE_FINAL(
      classes()
          .that(DescribedPredicate.describe("could be final", Rule::couldBeFinal))
          .should()
          .haveModifier(JavaModifier.FINAL)),

  NO_GLOBAL_STATE(fields().that().areStatic().should().beFinal()),

  EXCEPTIONS_HAVE_NAMES(NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS);

  // An ArchRule is a value, though its library does not say so in a way the compiler reads.
  @SuppressWarnings("ImmutableEnumChecker")
  private final ArchRule rule;

  Rule(ArchRule rule) {
    // Packages come one after another; until then some rules have nothing to look at.
    this.rule = rule.allowEmptyShould(true);
  }

  /** Returns what breaks the rule in these classes, one text each. */
  List<String> breaches(JavaClasses seen) {
    return rule.evaluate(seen).getFailureReport().getDetails();
  }

  private static GivenClassesConjunction inside(String... names) {
    return classes().that().resideInAnyPackage(packages(names));
  }

  private static GivenClassesConjunction outside(String... names) {
    return classes().that().resideOutsideOfPackages(packages(names));
  }

  private static String[] packages(String... names) {
    return Arrays.stream(names).map(name -> "handwheel." + name + "..").toArray(String[]::new);
  }

  private static boolean isMain(JavaMethod method) {
    return method.getName().equals("main")
        && method.getModifiers().contains(JavaModifier.STATIC)
        && method.getRawParameterTypes().stream()
            .allMatch(type -> type.getName().equals(String[].class.getName()));
  }

  private static boolean couldBeFinal(JavaClass type) {
    return !type.isInterface()
        && !type.isEnum()
        && !type.isAnonymousClass()
        && !type.getModifiers().contains(JavaModifier.ABSTRACT)
        && !type.getModifiers().contains(JavaModifier.SYNTHETIC);
  }

  private static ArchCondition<JavaClass> condition(
      String words, Function<JavaClass, List<String>> breaches) {
    return new ArchCondition<>(words) {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        breaches.apply(type).forEach(text -> events.add(SimpleConditionEvent.violated(type, text)));
      }
    };
  }
}
