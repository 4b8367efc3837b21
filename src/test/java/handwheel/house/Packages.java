package handwheel.house;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.NullMarked;

/** The table of packages: who may use whom, and which library is used where. */
final class Packages {
  private static final String ROOT = "handwheel";

  /** Package to the packages it may use. A package that is not here may not exist. */
  static final Map<String, List<String>> MAY_USE = mayUse();

  /** Library to the packages that may use it. */
  private static final Map<String, List<String>> LIBRARIES = libraries();

  private Packages() {}

  private static Map<String, List<String>> mayUse() {
    Map<String, List<String>> table = new LinkedHashMap<>();
    table.put("units", List.of());
    table.put("diagnostics", List.of());
    table.put("water", List.of("units"));
    table.put("plant", List.of("units", "water"));
    table.put("ship", List.of("plant", "units", "diagnostics"));
    // Of the plant a script knows only the enums; see isPlantEnumForCasualty.
    table.put("casualty", List.of("ship", "units", "diagnostics"));
    table.put("reader", List.of("casualty", "ship", "plant", "units", "diagnostics"));
    table.put("logbook", List.of("units"));
    table.put("drill", List.of("casualty", "ship", "plant", "logbook", "units"));
    table.put("scoring", List.of("casualty", "ship", "logbook", "units", "diagnostics"));
    table.put("archive", List.of("logbook", "units"));
    table.put("debrief", withTheirs(table, "drill", "scoring"));
    table.put("proof", withTheirs(table, "drill", "scoring"));
    table.put("board", withTheirs(table, "archive", "debrief"));
    table.put(
        "screen",
        List.of(
            "board",
            "debrief",
            "scoring",
            "drill",
            "casualty",
            "ship",
            "logbook",
            "units",
            "diagnostics"));
    table.put("terminal", List.of("screen"));
    table.put("app", List.copyOf(table.keySet()));
    return table;
  }

  /** These packages and what they in turn may use. */
  private static List<String> withTheirs(Map<String, List<String>> table, String... names) {
    List<String> all = new ArrayList<>(List.of(names));
    for (String name : names) {
      all.addAll(table.get(name));
    }
    return all.stream().distinct().toList();
  }

  private static Map<String, List<String>> libraries() {
    Map<String, List<String>> table = new LinkedHashMap<>();
    table.put("org.yaml.snakeyaml.", List.of("reader"));
    table.put("com.google.gson.", List.of("logbook", "app"));
    table.put("com.googlecode.lanterna.", List.of("terminal"));
    table.put("org.jline.", List.of("terminal"));
    table.put("org.sqlite.", List.of("board"));
    table.put("java.sql.", List.of("board"));
    table.put("picocli.", List.of("app"));
    table.put("java.", List.copyOf(MAY_USE.keySet()));
    table.put("org.jspecify.annotations.", List.copyOf(MAY_USE.keySet()));
    return table;
  }

  /** Says what {@code user} uses though its package may not. */
  static List<String> breaches(JavaClass user) {
    String from = shortName(user);
    if (!MAY_USE.containsKey(from)) {
      return user.getSimpleName().equals("package-info")
          ? List.of()
          : List.of(user.getName() + " is in a package that the table does not know");
    }
    return user.getDirectDependenciesFromSelf().stream()
        .filter(d -> !isAllowed(from, d.getTargetClass().getBaseComponentType()))
        .map(Dependency::getDescription)
        .map(text -> text + " (" + from + " may use " + MAY_USE.get(from) + ")")
        .toList();
  }

  private static boolean isAllowed(String from, JavaClass target) {
    if (target.isPrimitive()) {
      return true;
    }
    if (target.getPackageName().startsWith(ROOT)) {
      String to = shortName(target);
      return to.equals(from)
          || MAY_USE.get(from).contains(to)
          || isPlantEnumForCasualty(from, to, target);
    }
    return LIBRARIES.entrySet().stream()
        .filter(library -> target.getName().startsWith(library.getKey()))
        .findFirst()
        .map(library -> library.getValue().contains(from))
        .orElse(false);
  }

  private static boolean isPlantEnumForCasualty(String from, String to, JavaClass target) {
    return from.equals("casualty") && to.equals("plant") && target.isEnum();
  }

  /** The package without the root: {@code plant}, or {@code a.b} for what should not exist. */
  private static String shortName(JavaClass type) {
    String name = type.getPackageName();
    return name.startsWith(ROOT + ".") ? name.substring(ROOT.length() + 1) : name;
  }

  /** Says whether the package of {@code type} lacks its null mark. */
  static List<String> unmarked(JavaClass type) {
    return type.getPackage().isAnnotatedWith(NullMarked.class)
        ? List.of()
        : List.of(type.getPackageName() + " lacks a package-info.java with @NullMarked");
  }
}
