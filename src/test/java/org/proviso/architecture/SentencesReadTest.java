package org.proviso.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.CaseTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/**
 * Code never decides by reading a sentence: it compares no text with words that a person reads, and looks at no message
 * of an exception or a refusal. Sentences may be mended at any time; a code, a type or a field says what is the case.
 */
class SentencesReadTest {

    /** Ways to compare texts. */
    private static final Set<String> COMPARING = Set.of(
            "equals",
            "equalsIgnoreCase",
            "contains",
            "startsWith",
            "endsWith",
            "indexOf",
            "lastIndexOf",
            "matches",
            "contentEquals",
            "compareTo");

    /** Ways to ask for what a person reads. */
    private static final Set<String> WORDS = Set.of("getMessage", "getLocalizedMessage", "spoken");

    /** Two words, one after the other. */
    private static final Pattern SENTENCE = Pattern.compile("[A-Za-z]{2,},? [A-Za-z]{2,}");

    private static List<String> readers(List<Path> sources) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> found = new ArrayList<>();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, null, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(sources));
            for (CompilationUnitTree unit : task.parse()) {
                new Reader(unit, found).scan(unit, null);
            }
        }
        return found;
    }

    private static List<Path> sources(Path folder) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
    }

    /** Notes every comparison with a sentence, and every comparison of one. */
    private static final class Reader extends TreeScanner<Void, Void> {

        private final CompilationUnitTree unit;
        private final List<String> found;

        Reader(CompilationUnitTree unit, List<String> found) {
            this.unit = unit;
            this.found = found;
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree call, Void unused) {
            if (call.getMethodSelect() instanceof MemberSelectTree select
                    && COMPARING.contains(select.getIdentifier().toString())
                    && (isSentence(select.getExpression())
                            || asksForWords(select.getExpression())
                            || call.getArguments().stream()
                                    .anyMatch(argument -> isSentence(argument) || asksForWords(argument)))) {
                note(call);
            }
            return super.visitMethodInvocation(call, unused);
        }

        @Override
        public Void visitCase(CaseTree label, Void unused) {
            label.getExpressions().stream().filter(Reader::isSentence).forEach(this::note);
            return super.visitCase(label, unused);
        }

        private static boolean isSentence(ExpressionTree expression) {
            return expression instanceof LiteralTree literal
                    && literal.getValue() instanceof String text
                    && SENTENCE.matcher(text).find();
        }

        private static boolean asksForWords(ExpressionTree expression) {
            return expression instanceof MethodInvocationTree call
                    && call.getArguments().isEmpty()
                    && call.getMethodSelect() instanceof MemberSelectTree select
                    && WORDS.contains(select.getIdentifier().toString());
        }

        private void note(Tree tree) {
            found.add(Path.of(unit.getSourceFile().getName()).getFileName() + ": "
                    + tree.toString().replaceAll("\\s+", " "));
        }
    }

    @Test
    void no_code_decides_by_reading_a_sentence() throws IOException {
        assertThat(readers(sources(Path.of("src/main/java")))).isEmpty();
    }

    @Test
    void code_that_reads_a_sentence_is_found_out() throws IOException {
        Path reads = Path.of("src/test/java/org/proviso/architecture/fixture/sentences/ReadsSentences.java");
        assertThat(readers(List.of(reads))).hasSize(4);
    }
}
