package farwatt.house;

import com.sun.source.tree.BlockTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** How many lines the methods of Java sources take, from the first line of the head to the closing brace. */
final class Sizes {

    /** A method, constructor or initialiser block. */
    record Method(String file, String name, long lines) {
        @Override
        public String toString() {
            return file + "#" + name + " has " + lines + " lines";
        }
    }

    private Sizes() {}

    /** The methods in the given sources, named as {@link JavaFileObject#getName} does. */
    static List<Method> of(Iterable<? extends JavaFileObject> sources) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
            JavacTask task = (JavacTask) compiler.getTask(null, files, null, List.of("-proc:none"), null, sources);
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            List<Method> found = new ArrayList<>();
            for (CompilationUnitTree unit : task.parse()) {
                unit.accept(new Scanner(unit, positions, found), null);
            }
            return found;
        }
    }

    private static final class Scanner extends TreeScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final List<Method> found;

        Scanner(CompilationUnitTree unit, SourcePositions positions, List<Method> found) {
            this.unit = unit;
            this.positions = positions;
            this.found = found;
        }

        @Override
        public Void visitMethod(MethodTree method, Void unused) {
            add(method.getName().toString(), method);
            return super.visitMethod(method, null);
        }

        @Override
        public Void visitClass(ClassTree type, Void unused) {
            for (Tree member : type.getMembers()) {
                if (member instanceof BlockTree) {
                    add("<initialiser>", member);
                }
            }
            return super.visitClass(type, null);
        }

        private void add(String name, Tree tree) {
            LineMap lines = unit.getLineMap();
            long first = lines.getLineNumber(positions.getStartPosition(unit, tree));
            long last = lines.getLineNumber(positions.getEndPosition(unit, tree));
            found.add(new Method(unit.getSourceFile().getName(), name, last - first + 1));
        }
    }
}
