package org.proviso.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.ExpressionStatementTree;
import com.sun.source.tree.LambdaExpressionTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.util.ElementFilter;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.proviso.core.act.ActResult;

/** No refusal is lost: whoever calls an act looks at what came of it. Read from the sources with their types. */
class ResultsSeenTest {

    private static List<String> dropped(List<Path> sources) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> found = new ArrayList<>();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null,
                    files,
                    null,
                    List.of("-proc:none", "-nowarn", "-cp", System.getProperty("java.class.path")),
                    null,
                    files.getJavaFileObjectsFromPaths(sources));
            Iterable<? extends Tree> units = task.parse();
            task.analyze();
            Dropped look = new Dropped(task, found);
            units.forEach(unit -> look.scan(new TreePath((com.sun.source.tree.CompilationUnitTree) unit), null));
        }
        return found;
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> walk = Files.walk(Path.of("src/main/java"))) {
            return walk.filter(path -> path.toString().endsWith(".java")).toList();
        }
    }

    /** Notes every result that is left on the way: in a statement, or by a lambda whose caller wants nothing. */
    private static final class Dropped extends TreePathScanner<Void, Void> {

        private final JavacTask task;
        private final Trees trees;
        private final List<String> found;

        Dropped(JavacTask task, List<String> found) {
            this.task = task;
            this.trees = Trees.instance(task);
            this.found = found;
        }

        @Override
        public Void visitExpressionStatement(ExpressionStatementTree statement, Void unused) {
            note(statement.getExpression());
            return super.visitExpressionStatement(statement, unused);
        }

        @Override
        public Void visitLambdaExpression(LambdaExpressionTree lambda, Void unused) {
            if (lambda.getBodyKind() == LambdaExpressionTree.BodyKind.EXPRESSION && wantsNothing()) {
                note(lambda.getBody());
            }
            return super.visitLambdaExpression(lambda, unused);
        }

        private boolean wantsNothing() {
            TypeMirror target = trees.getTypeMirror(getCurrentPath());
            return target instanceof DeclaredType declared
                    && ElementFilter.methodsIn(task.getElements().getAllMembers((TypeElement) declared.asElement()))
                            .stream()
                            .filter(method -> method.getModifiers().contains(Modifier.ABSTRACT))
                            .map(ExecutableElement::getReturnType)
                            .anyMatch(type -> type.getKind() == TypeKind.VOID);
        }

        private void note(Tree expression) {
            TypeMirror type = trees.getTypeMirror(new TreePath(getCurrentPath(), expression));
            if (type instanceof DeclaredType declared
                    && expression.getKind() == Tree.Kind.METHOD_INVOCATION
                    && ((TypeElement) declared.asElement())
                            .getQualifiedName()
                            .contentEquals(ActResult.class.getName())) {
                found.add(Path.of(getCurrentPath()
                                        .getCompilationUnit()
                                        .getSourceFile()
                                        .getName())
                                .getFileName()
                        + ": " + expression.toString().replaceAll("\\s+", " "));
            }
        }
    }

    @Test
    void no_result_of_an_act_is_dropped_unseen() throws IOException {
        assertThat(dropped(sources())).isEmpty();
    }

    @Test
    void results_that_are_dropped_are_found_out() throws IOException {
        Path drops = Path.of("src/test/java/org/proviso/architecture/fixture/results/DropsResults.java");
        assertThat(dropped(List.of(drops))).hasSize(2);
    }
}
