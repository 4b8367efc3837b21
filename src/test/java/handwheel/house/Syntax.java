package handwheel.house;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.IfTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.Tree.Kind;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Walks one file's syntax and notes what breaks the shape. */
final class Syntax extends TreeScanner<Void, Void> {
  static final int METHOD_LINES_MAX = 50;
  static final int PARAMETERS_MAX = 5;
  static final int NESTING_MAX = 3;

  /** Zero points of the Celsius and Fahrenheit scales: they belong to {@code units} alone. */
  private static final Set<String> OFFSETS = new TreeSet<>(List.of("273.15", "459.67"));

  private static final Set<Kind> BRANCHES =
      EnumSet.of(
          Kind.IF,
          Kind.FOR_LOOP,
          Kind.ENHANCED_FOR_LOOP,
          Kind.WHILE_LOOP,
          Kind.DO_WHILE_LOOP,
          Kind.SWITCH,
          Kind.SWITCH_EXPRESSION,
          Kind.TRY,
          Kind.SYNCHRONIZED);

  private final SourceFile file;
  private final List<String> breaches = new ArrayList<>();
  private final List<Integer> methodLines = new ArrayList<>();
  private int depth;
  private boolean inRecord;
  private Tree elseIf;

  private Syntax(SourceFile file) {
    this.file = file;
  }

  /** Walks a file. */
  static Syntax of(SourceFile file) {
    Syntax syntax = new Syntax(file);
    syntax.scan(file.tree(), null);
    return syntax;
  }

  /** Returns what breaks the shape, with file and line. */
  List<String> breaches() {
    return breaches;
  }

  /** Returns the length of every method in lines, annotations included, comments before it not. */
  List<Integer> methodLines() {
    return methodLines;
  }

  @Override
  public Void scan(Tree tree, Void unused) {
    boolean deeper = tree != null && BRANCHES.contains(tree.getKind()) && tree != elseIf;
    depth += deeper ? 1 : 0;
    if (deeper && depth == NESTING_MAX + 1) {
      note(tree, "nesting deeper than " + NESTING_MAX);
    }
    super.scan(tree, null);
    depth -= deeper ? 1 : 0;
    return null;
  }

  @Override
  public Void visitIf(IfTree tree, Void unused) {
    scan(tree.getCondition(), null);
    scan(tree.getThenStatement(), null);
    // A chain of else-if is one level, not one more for each link.
    elseIf = tree.getElseStatement() instanceof IfTree next ? next : null;
    return scan(tree.getElseStatement(), null);
  }

  @Override
  public Void visitClass(ClassTree tree, Void unused) {
    int outerDepth = depth;
    boolean outerInRecord = inRecord;
    depth = 0;
    inRecord = tree.getKind() == Kind.RECORD;
    super.visitClass(tree, null);
    depth = outerDepth;
    inRecord = outerInRecord;
    return null;
  }

  @Override
  public Void visitMethod(MethodTree tree, Void unused) {
    int lines = lastLine(tree) - firstLine(tree) + 1;
    methodLines.add(lines);
    if (lines > METHOD_LINES_MAX) {
      note(tree, "method " + tree.getName() + " has " + lines + " lines");
    }
    boolean isRecordConstructor = inRecord && tree.getReturnType() == null;
    if (tree.getParameters().size() > PARAMETERS_MAX && !isRecordConstructor) {
      note(tree, "method " + tree.getName() + " has more than 5 parameters; make a record");
    }
    return super.visitMethod(tree, null);
  }

  @Override
  public Void visitAnnotation(AnnotationTree tree, Void unused) {
    String name = tree.getAnnotationType().toString();
    if (name.substring(name.lastIndexOf('.') + 1).startsWith("Disabled")) {
      note(tree, "a test that does not run");
    }
    return super.visitAnnotation(tree, null);
  }

  @Override
  public Void visitLiteral(LiteralTree tree, Void unused) {
    boolean isOffset = tree.getValue() instanceof Number && OFFSETS.contains(text(tree));
    if (isOffset && !file.packageName().equals("handwheel.units")) {
      note(tree, text(tree) + " outside units; convert with Unit");
    }
    return null;
  }

  private static String text(LiteralTree tree) {
    return String.valueOf(tree.getValue());
  }

  private int firstLine(Tree tree) {
    return file.lineAt(file.positions().getStartPosition(file.tree(), tree));
  }

  private int lastLine(Tree tree) {
    return file.lineAt(file.positions().getEndPosition(file.tree(), tree) - 1);
  }

  private void note(Tree tree, String what) {
    breaches.add(file.name() + ":" + firstLine(tree) + ": " + what);
  }
}
