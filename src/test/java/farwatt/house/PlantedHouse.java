package farwatt.house;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;
import javax.tools.ToolProvider;

/** A house of small classes, written and compiled on the spot; it shares nothing with the program but the names. */
final class PlantedHouse {
    private final List<JavaFileObject> sources = new ArrayList<>();

    void add(String packageName, String name, String body) {
        String text = "package " + packageName + "; public class " + name + " { " + body + " }";
        URI place = URI.create("planted:///" + packageName.replace('.', '/') + "/" + name + ".java");
        sources.add(new SimpleJavaFileObject(place, JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return text;
            }
        });
    }

    /** Compiles what was added into the folder and reads it back. */
    JavaClasses build(Path folder) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
            files.setLocationFromPaths(StandardLocation.CLASS_OUTPUT, List.of(folder));
            files.setLocationFromPaths(StandardLocation.CLASS_PATH, List.of());
            if (!compiler.getTask(null, files, null, List.of("-proc:none"), null, sources)
                    .call()) {
                throw new IllegalStateException("the planted house does not compile");
            }
        }
        return new ClassFileImporter().importPath(folder);
    }
}
