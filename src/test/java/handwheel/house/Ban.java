package handwheel.house;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnitAccess;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Something no class of certain packages may use, with what to do instead. */
interface Ban {
  /** Names what is banned: {@code java.util.HashMap}, {@code java.net.*}, {@code a.B.member}. */
  List<String> names();

  /** Says where {@code user} breaks the ban, one sentence each. */
  Stream<String> breaches(JavaClass user);

  /** Bans types; a name that ends in {@code .*} stands for a package and those below it. */
  static Ban types(String instead, String... names) {
    return new Types(List.of(names), instead);
  }

  /**
   * Bans members whatever their parameters; a constructor is called {@code <init>}, {@code *.x} is
   * {@code x} of any type.
   */
  static Ban members(String instead, String... names) {
    return membersIf(access -> true, instead, names);
  }

  /** Bans members where the access fulfils a condition. */
  static Ban membersIf(Predicate<JavaAccess<?>> when, String instead, String... names) {
    return new Members(List.of(names), when, instead);
  }

  /** Holds for a call or method reference none of whose parameters has one of the types. */
  static Predicate<JavaAccess<?>> without(Class<?>... types) {
    return access -> parameters(access).noneMatch(p -> isOneOf(p, types));
  }

  /** Holds for a call or method reference with a parameter of one of the types. */
  static Predicate<JavaAccess<?>> with(Class<?>... types) {
    return access -> parameters(access).anyMatch(p -> isOneOf(p, types));
  }

  /** Holds for a call or method reference whose number of parameters is another. */
  static Predicate<JavaAccess<?>> unlessParameters(long count) {
    return access -> parameters(access).count() != count;
  }

  /** Holds outside constructors and static initializers, that is in whatever runs each tick. */
  static Predicate<JavaAccess<?>> inMethods() {
    return access -> access.getOrigin().isMethod();
  }

  /** Makes one condition of many bans. */
  static ArchCondition<JavaClass> none(List<Ban> bans) {
    return new ArchCondition<>("use nothing banned") {
      @Override
      public void check(JavaClass user, ConditionEvents events) {
        bans.stream()
            .flatMap(ban -> ban.breaches(user))
            .forEach(text -> events.add(SimpleConditionEvent.violated(user, text)));
      }
    };
  }

  private static Stream<JavaClass> parameters(JavaAccess<?> access) {
    return access instanceof JavaCodeUnitAccess<?> unit
        ? unit.getTarget().getRawParameterTypes().stream()
        : Stream.of();
  }

  private static boolean isOneOf(JavaClass parameter, Class<?>... types) {
    return Arrays.stream(types).anyMatch(type -> parameter.getName().equals(type.getName()));
  }

  /** A ban of types. */
  record Types(List<String> names, String instead) implements Ban {
    @Override
    public Stream<String> breaches(JavaClass user) {
      return user.getDirectDependenciesFromSelf().stream()
          .filter(d -> names.stream().anyMatch(name -> covers(name, d.getTargetClass())))
          .map(Dependency::getDescription)
          .map(text -> text + " (" + instead + ")");
    }

    private static boolean covers(String name, JavaClass target) {
      JavaClass type = target.getBaseComponentType();
      return name.endsWith(".*")
          ? type.getName().startsWith(name.substring(0, name.length() - 1))
          : type.getName().equals(name);
    }
  }

  /** A ban of members. */
  record Members(List<String> names, Predicate<JavaAccess<?>> when, String instead) implements Ban {
    @Override
    public Stream<String> breaches(JavaClass user) {
      return user.getAccessesFromSelf().stream()
          .filter(access -> names.stream().anyMatch(name -> isNamed(name, access)))
          .filter(when)
          .map(access -> access.getDescription() + " (" + instead + ")");
    }

    private static boolean isNamed(String name, JavaAccess<?> access) {
      String member = "." + access.getTarget().getName();
      return name.equals(access.getTargetOwner().getName() + member) || name.equals("*" + member);
    }
  }
}
