package bayfolio;

import java.io.File;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Programs of this build in processes of their own. */
public final class Jvm {
    private Jvm() {}

    /**
     * @param options of Java, such as {@code -Xmx64m}
     * @param program a class with {@code main}
     * @return output and errors in one stream
     */
    public static Process start(List<String> options, Class<?> program, String... words) throws IOException {
        return started(List.of(), options, program, words);
    }

    /**
     * The same below a limit that a shell sets.
     *
     * @param limit such as {@code ulimit -f 20}
     */
    public static Process limited(String limit, Class<?> program, String... words) throws IOException {
        return started(List.of("sh", "-c", limit + " && exec \"$@\"", "sh"), List.of(), program, words);
    }

    private static Process started(List<String> before, List<String> options, Class<?> program, String... words)
            throws IOException {
        List<String> command = new ArrayList<>(before);
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        // It starts sooner so.
        command.add("-XX:TieredStopAtLevel=1");
        command.addAll(options);
        command.addAll(List.of("-cp", classPath(), program.getName()));
        command.addAll(List.of(words));
        return new ProcessBuilder(command).redirectErrorStream(true).start();
    }

    /** Some runners of tests load the classes themselves. */
    private static String classPath() {
        return Jvm.class.getClassLoader() instanceof URLClassLoader loader
                ? Stream.of(loader.getURLs()).map(URL::getPath).collect(Collectors.joining(File.pathSeparator))
                : System.getProperty("java.class.path");
    }
}
