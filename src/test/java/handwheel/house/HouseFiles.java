package handwheel.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What the files of a project, seen from its top folder, do wrong. */
final class HouseFiles {
  private static final List<String> TOP =
      List.of("pom.xml", "README.md", "DEVELOPERS.md", "LICENSE", "src", "drills", "docs");

  private static final List<String> TOP_NEEDED = TOP;

  private static final List<String> BUILT = List.of("target");

  private static final Pattern TEXT =
      Pattern.compile(".*\\.(md|java|ya?ml|txt|csv|json|html|xml|properties)|(.*/)?\\.ci/run");

  private static final Pattern PROSE = Pattern.compile(".*\\.(md|ya?ml|html)");

  /** A place on one machine: the folders in which people and build servers keep their work. */
  private static final Pattern MACHINE_PATH =
      Pattern.compile("(?<![\\w.~/-])/(?:work|root|home|Users)/");

  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#\\s:]+)(?:#[^)]*)?\\)");

  private static final Pattern PAGE_NAME =
      Pattern.compile("(?<![\\w/.:-])(?:[\\w.-]+/)*[\\w-]+\\.md\\b");

  private static final Pattern DECISION = Pattern.compile("\\d{4}-[a-z0-9-]+\\.md");

  private final Path root;
  private final List<Path> files;

  /** Looks at the project in {@code root}. */
  HouseFiles(Path root) {
    this.root = root;
    try (Stream<Path> all = Files.walk(root)) {
      files =
          all.filter(Files::isRegularFile)
              .map(root::relativize)
              .filter(file -> !isBuilt(file) && !isTool(file))
              .sorted()
              .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static boolean isBuilt(Path file) {
    return BUILT.stream().anyMatch(file::startsWith);
  }

  /** Dot-folders belong to tools; two of them are the project's own. */
  private static boolean isTool(Path file) {
    String top = file.getName(0).toString();
    boolean isFolder = file.getNameCount() > 1;
    return top.equals(".git")
        || (isFolder && top.startsWith(".") && !top.equals(".ci") && !top.equals(".mvn"));
  }

  /** The top folder holds what a newcomer expects and nothing else. */
  List<String> top() {
    List<String> breaches = new ArrayList<>();
    for (String name : names(root)) {
      if (!TOP.contains(name) && !BUILT.contains(name) && !name.startsWith(".")) {
        breaches.add(name + ": not on the list of the top folder");
      }
    }
    for (String name : TOP_NEEDED) {
      if (!Files.exists(root.resolve(name))) {
        breaches.add(name + ": missing");
      }
    }
    return breaches;
  }

  /** Each decision is linked from the index, and its name begins with its own number. */
  List<String> decisions() {
    List<String> breaches = new ArrayList<>();
    String index = read(Path.of("docs/decisions/README.md"));
    String before = "";
    for (String name : names(root.resolve("docs/decisions"))) {
      if (name.equals("README.md")) {
        continue;
      }
      if (!DECISION.matcher(name).matches()) {
        breaches.add(name + ": not named like 0042-short-title.md");
        continue;
      }
      if (!index.contains("(" + name + ")")) {
        breaches.add(name + ": not linked from docs/decisions/README.md");
      }
      if (name.substring(0, 4).equals(before)) {
        breaches.add(name + ": number taken twice");
      }
      before = name.substring(0, 4);
    }
    return breaches;
  }

  /** No text names a folder of one machine. */
  List<String> machinePaths() {
    return files.stream()
        .filter(file -> TEXT.matcher(slashed(file)).matches())
        .flatMap(file -> found(file, MACHINE_PATH).stream())
        .toList();
  }

  private List<String> found(Path file, Pattern pattern) {
    List<String> lines = read(file).lines().toList();
    return PlainText.found(slashed(file), lines, pattern, "path of one machine: ");
  }

  /** Pages and scripts keep off the banned words; Java files are looked at elsewhere. */
  List<String> words() {
    return files.stream()
        .filter(file -> PROSE.matcher(slashed(file)).matches())
        .flatMap(file -> PlainText.wordBreaches(slashed(file), read(file)).stream())
        .toList();
  }

  /** Links between pages lead somewhere. */
  List<String> links() {
    List<String> breaches = new ArrayList<>();
    for (Path file : files) {
      if (slashed(file).endsWith(".md")) {
        LINK.matcher(read(file))
            .results()
            .map(link -> link.group(1))
            .filter(link -> !Files.exists(root.resolve(file).resolveSibling(link)))
            .forEach(link -> breaches.add(slashed(file) + ": leads nowhere: " + link));
      }
    }
    return breaches;
  }

  /** A page that any text names is there; tests make up names and are left out. */
  List<String> pageNames() {
    List<String> pages = files.stream().map(HouseFiles::slashed).toList();
    List<String> breaches = new ArrayList<>();
    for (Path file : files) {
      if (TEXT.matcher(slashed(file)).matches() && !file.startsWith("src/test")) {
        PAGE_NAME
            .matcher(read(file))
            .results()
            .map(MatchResult::group)
            .filter(name -> pages.stream().noneMatch(page -> ("/" + page).endsWith("/" + name)))
            .filter(name -> !Files.exists(root.resolve(file).resolveSibling(name)))
            .forEach(name -> breaches.add(slashed(file) + ": names an absent page: " + name));
      }
    }
    return breaches;
  }

  /** The README names how to build and how to test; the build server runs the second. */
  List<String> commands() {
    if (!Files.exists(root.resolve("README.md"))) {
      return List.of();
    }
    List<String> commands =
        read(Path.of("README.md")).lines().map(String::strip).filter(HouseFiles::isMaven).toList();
    List<String> breaches = new ArrayList<>();
    if (commands.stream().noneMatch(command -> command.contains(" package"))) {
      breaches.add("README.md: no line `mvn ... package`");
    }
    List<String> run = read(Path.of(".ci/run")).lines().toList();
    if (commands.stream().noneMatch(c -> c.contains(" verify") && run.contains(c))) {
      breaches.add("README.md: no line `mvn ... verify` that stands in .ci/run too");
    }
    return breaches;
  }

  private static boolean isMaven(String line) {
    return line.startsWith("mvn ");
  }

  private static List<String> names(Path folder) {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String slashed(Path file) {
    return file.toString().replace('\\', '/');
  }

  private String read(Path file) {
    try {
      return Files.readString(root.resolve(file), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
