package handwheel.house;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/**
 * A Java file, parsed but not compiled.
 *
 * @param name path as a person writes it
 * @param text its text
 * @param tree its syntax
 * @param positions of the tree's parts in the text
 */
record SourceFile(String name, String text, CompilationUnitTree tree, SourcePositions positions) {

  /** Reads all Java files below some folders, in the order of their names. */
  static List<SourceFile> below(Path... roots) {
    List<Text> texts = new ArrayList<>();
    for (Path root : roots) {
      texts.addAll(textsBelow(root));
    }
    return parse(texts);
  }

  /** Parses one text. */
  static SourceFile of(String name, String text) {
    return parse(List.of(new Text(name, text))).get(0);
  }

  private static List<Text> textsBelow(Path root) {
    try (Stream<Path> paths = Files.walk(root)) {
      return paths
          .filter(path -> path.toString().endsWith(".java"))
          .sorted()
          .map(path -> new Text(path.toString(), read(path)))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String read(Path path) {
    try {
      return Files.readString(path, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<SourceFile> parse(List<Text> texts) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    JavacTask task =
        (JavacTask) compiler.getTask(null, null, null, List.of("-proc:none"), null, texts);
    SourcePositions positions = Trees.instance(task).getSourcePositions();
    List<SourceFile> files = new ArrayList<>();
    try {
      for (CompilationUnitTree tree : task.parse()) {
        String path = tree.getSourceFile().toUri().getPath().substring(1);
        String text = tree.getSourceFile().getCharContent(true).toString();
        files.add(new SourceFile(path, text, tree, positions));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  /** Returns the package, empty for none. */
  String packageName() {
    return tree.getPackageName() == null ? "" : tree.getPackageName().toString();
  }

  /** Returns the line of a character, from 1. */
  int lineAt(long offset) {
    return (int) tree.getLineMap().getLineNumber(offset);
  }

  /** A text for the compiler. */
  private static final class Text extends SimpleJavaFileObject {
    private final String text;

    Text(String name, String text) {
      super(URI.create("text:///" + name), JavaFileObject.Kind.SOURCE);
      this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return text;
    }
  }
}
