package stackside;

import com.sun.source.tree.BlockTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IfTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.InstanceOfTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ParameterizedTypeTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.StatementTree;
import com.sun.source.tree.ThrowTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TypeCastTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.ToolProvider;

/**
 * Reads Java sources and finds where a method asks one value for two or more kinds of a sealed type
 * and goes on in silence when it is none of them. Such a chain must end in a branch that throws, or
 * in a cast, so that a kind that is added later cannot pass unseen.
 */
final class ClosedKinds {

  private static final Set<String> TYPES = Set.of("CLASS", "INTERFACE", "RECORD", "ENUM");

  private final Trees trees;
  private final List<CompilationUnitTree> units = new ArrayList<>();

  /** Every type of the sources by its full name, with the names of what it extends. */
  private final Map<String, Set<String>> above = new HashMap<>();

  private final Set<String> sealed = new HashSet<>();

  private ClosedKinds(Iterable<? extends JavaFileObject> sources) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    JavacTask task =
        (JavacTask) compiler.getTask(null, null, null, List.of("-proc:none"), null, sources);
    trees = Trees.instance(task);
    try {
      task.parse().forEach(units::add);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    units.forEach(unit -> new Declared(unit).scan(unit, null));
    units.forEach(unit -> new Heads(unit).scan(unit, null));
  }

  static ClosedKinds in(Iterable<? extends JavaFileObject> sources) {
    return new ClosedKinds(sources);
  }

  /** The places of all chains that end in silence, as {@code File.java:12 value as Type}. */
  List<String> silent() {
    List<String> found = new ArrayList<>();
    units.forEach(unit -> new Chains(unit, found).scan(unit, null));
    return found;
  }

  /** The full names of the sealed types in the sources. */
  Set<String> sealed() {
    return new TreeSet<>(sealed);
  }

  /** The outermost sealed types that a type is, or is a kind of. */
  private Set<String> roots(String type) {
    Set<String> roots = new TreeSet<>();
    above.getOrDefault(type, Set.of()).forEach(each -> roots.addAll(roots(each)));
    if (roots.isEmpty() && sealed.contains(type)) {
      roots.add(type);
    }
    return roots;
  }

  /** Finds out which types there are. */
  private final class Declared extends TreePathScanner<Void, Void> {
    private final CompilationUnitTree unit;

    Declared(CompilationUnitTree unit) {
      this.unit = unit;
    }

    @Override
    public Void visitClass(ClassTree type, Void nothing) {
      String name = nameOf(unit, getCurrentPath());
      above.put(name, new TreeSet<>());
      if (type.getModifiers().getFlags().contains(Modifier.SEALED)) {
        sealed.add(name);
      }
      return super.visitClass(type, null);
    }
  }

  /** Finds out what each type extends. */
  private final class Heads extends TreePathScanner<Void, Void> {
    private final CompilationUnitTree unit;

    Heads(CompilationUnitTree unit) {
      this.unit = unit;
    }

    @Override
    public Void visitClass(ClassTree type, Void nothing) {
      Stream.concat(Stream.ofNullable(type.getExtendsClause()), type.getImplementsClause().stream())
          .flatMap(head -> resolved(unit, getCurrentPath(), head).stream())
          .forEach(above.get(nameOf(unit, getCurrentPath()))::add);
      return super.visitClass(type, null);
    }
  }

  private static String nameOf(CompilationUnitTree unit, TreePath path) {
    List<String> names = new ArrayList<>();
    for (Tree tree : path) {
      if (tree instanceof ClassTree type) {
        names.add(0, type.getSimpleName().toString());
      }
    }
    return unit.getPackageName() + "." + String.join(".", names);
  }

  /** The type of the sources that is meant by a name; none for one of a library. */
  private Optional<String> resolved(CompilationUnitTree unit, TreePath path, Tree written) {
    Tree plain = written instanceof ParameterizedTypeTree generic ? generic.getType() : written;
    String name = plain.toString();
    String head = name.replaceFirst("\\..*", "");
    List<String> wide = new ArrayList<>();
    for (TreePath at = path; at != null; at = at.getParentPath()) {
      if (TYPES.contains(at.getLeaf().getKind().name())) {
        wide.addAll(withAbove(nameOf(unit, at)));
      }
    }
    Stream<String> around = wide.stream().map(each -> each + "." + name);
    Stream<String> imported =
        unit.getImports().stream()
            .map(ImportTree::getQualifiedIdentifier)
            .map(Tree::toString)
            .filter(each -> each.endsWith("." + head))
            .map(each -> each + name.substring(head.length()));
    return Stream.of(
            around, imported, Stream.of(unit.getPackageName() + "." + name), Stream.of(name))
        .flatMap(each -> each)
        .filter(above::containsKey)
        .findFirst();
  }

  /** A type and all above it, whose member types can be named within it. */
  private Collection<String> withAbove(String type) {
    List<String> all = new ArrayList<>(List.of(type));
    above.getOrDefault(type, Set.of()).forEach(each -> all.addAll(withAbove(each)));
    return all;
  }

  /** One question for a kind. */
  private record KindTest(TreePath path, String kind) {}

  /** Looks at each method for itself. */
  private final class Chains extends TreePathScanner<Void, Void> {
    private final CompilationUnitTree unit;
    private final List<String> found;
    private Map<String, List<KindTest>> asked = new LinkedHashMap<>();

    Chains(CompilationUnitTree unit, List<String> found) {
      this.unit = unit;
      this.found = found;
    }

    @Override
    public Void visitMethod(MethodTree method, Void nothing) {
      Map<String, List<KindTest>> outside = asked;
      asked = new LinkedHashMap<>();
      super.visitMethod(method, null);
      asked.forEach(this::judge);
      asked = outside;
      return null;
    }

    @Override
    public Void visitInstanceOf(InstanceOfTree test, Void nothing) {
      TreePath path = getCurrentPath();
      resolved(unit, path, test.getType())
          .ifPresent(
              kind ->
                  roots(kind)
                      .forEach(
                          root ->
                              asked
                                  .computeIfAbsent(
                                      test.getExpression() + " as " + root,
                                      any -> new ArrayList<>())
                                  .add(new KindTest(path, kind))));
      return super.visitInstanceOf(test, null);
    }

    private void judge(String value, List<KindTest> tests) {
      if (tests.stream().map(KindTest::kind).distinct().count() > 1
          && !throwsAfter(tests.get(tests.size() - 1).path())) {
        long line =
            unit.getLineMap()
                .getLineNumber(
                    trees
                        .getSourcePositions()
                        .getStartPosition(unit, tests.get(0).path().getLeaf()));
        String file = unit.getSourceFile().getName().replaceFirst(".*[/\\\\]", "");
        found.add(file + ":" + line + " " + value);
      }
    }

    /** Whether what is done after the last of the questions was answered no throws. */
    private boolean throwsAfter(TreePath test) {
      Tree value = ((InstanceOfTree) test.getLeaf()).getExpression();
      Tree below = test.getLeaf();
      boolean turned = false;
      for (TreePath at = test.getParentPath(); at != null; at = at.getParentPath()) {
        if (at.getLeaf().getKind() == Tree.Kind.LOGICAL_COMPLEMENT) {
          turned = !turned;
        }
        if (at.getLeaf() instanceof IfTree branch && branch.getCondition() == below) {
          return isThrow(
              turned
                  ? Optional.of(branch.getThenStatement())
                  : Optional.ofNullable(branch.getElseStatement()).or(() -> next(branch)));
        }
        if (at.getLeaf() instanceof ConditionalExpressionTree choice
            && choice.getCondition() == below) {
          return isCastOf(value, turned ? choice.getTrueExpression() : choice.getFalseExpression());
        }
        if (at.getLeaf() instanceof StatementTree) {
          return false;
        }
        below = at.getLeaf();
      }
      return false;
    }

    /** The statement that follows where a branch without an else was not taken. */
    private Optional<StatementTree> next(IfTree branch) {
      TreePath at = TreePath.getPath(unit, branch);
      while (at.getParentPath().getLeaf() instanceof IfTree) {
        at = at.getParentPath();
      }
      if (at.getParentPath().getLeaf() instanceof BlockTree block) {
        int place = block.getStatements().indexOf(at.getLeaf());
        return block.getStatements().stream()
            .skip(place + 1L)
            .map(each -> (StatementTree) each)
            .findFirst();
      }
      return Optional.empty();
    }

    private boolean isThrow(Optional<StatementTree> statement) {
      return statement
          .map(
              each ->
                  each instanceof ThrowTree
                      || (each instanceof BlockTree block
                          && block.getStatements().size() == 1
                          && block.getStatements().get(0) instanceof ThrowTree))
          .orElse(false);
    }

    private boolean isCastOf(Tree value, ExpressionTree expression) {
      Boolean cast =
          new TreePathScanner<Boolean, Void>() {
            @Override
            public Boolean visitTypeCast(TypeCastTree each, Void nothing) {
              return bare(each.getExpression()).equals(value.toString());
            }

            @Override
            public Boolean reduce(Boolean one, Boolean other) {
              return Boolean.TRUE.equals(one) || Boolean.TRUE.equals(other);
            }
          }.scan(new TreePath(TreePath.getPath(unit, unit), expression), null);
      return Boolean.TRUE.equals(cast);
    }

    private static String bare(ExpressionTree expression) {
      return expression instanceof ParenthesizedTree inner
          ? bare(inner.getExpression())
          : expression.toString();
    }
  }
}
