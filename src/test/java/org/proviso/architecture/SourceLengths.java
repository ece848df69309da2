package org.proviso.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** How long source files and their methods are, as the compiler's own parser sees them. */
record SourceLengths(int files, int methods, List<String> tooLong) {

    private static final int FILE_LIMIT = 300;
    private static final int METHOD_LIMIT = 40;

    /** Measures every Java file under a folder. A method's lines run from its signature to its closing brace. */
    static SourceLengths under(Path folder) throws IOException {
        List<Path> sources;
        try (Stream<Path> walk = Files.walk(folder)) {
            sources = walk.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
        List<String> tooLong = new ArrayList<>();
        for (Path source : sources) {
            int lines = Files.readAllLines(source).size();
            if (lines > FILE_LIMIT) {
                tooLong.add(source.getFileName() + " has " + lines + " lines");
            }
        }
        return new SourceLengths(sources.size(), measureMethods(sources, tooLong), tooLong);
    }

    private static int measureMethods(List<Path> sources, List<String> tooLong) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask)
                    compiler.getTask(null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(sources));
            MethodScanner scanner = new MethodScanner(Trees.instance(task).getSourcePositions(), tooLong);
            for (CompilationUnitTree unit : task.parse()) {
                scanner.scan(unit, null);
            }
            return scanner.seen;
        }
    }

    private static final class MethodScanner extends TreePathScanner<Void, Void> {

        private final SourcePositions positions;
        private final List<String> tooLong;
        private int seen;

        MethodScanner(SourcePositions positions, List<String> tooLong) {
            this.positions = positions;
            this.tooLong = tooLong;
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            CompilationUnitTree unit = getCurrentPath().getCompilationUnit();
            LineMap map = unit.getLineMap();
            long lines = map.getLineNumber(positions.getEndPosition(unit, method))
                    - map.getLineNumber(positions.getStartPosition(unit, method))
                    + 1;
            seen++;
            if (lines > METHOD_LIMIT) {
                tooLong.add(Path.of(unit.getSourceFile().getName()).getFileName() + ": " + method.getName() + " has "
                        + lines + " lines");
            }
            return super.visitMethod(method, nothing);
        }
    }
}
