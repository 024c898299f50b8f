package io.github.saltfront.app.follow;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/** A class path of jars alone, as the program has it when it is packed. */
final class JarredClassPath {
    private JarredClassPath() {}

    /**
     * Packs the folders of a class path.
     *
     * @param classPath the class path
     * @param jars where to put the jars
     * @return the class path with a jar in the place of each folder
     */
    static String of(String classPath, Path jars) throws IOException {
        Files.createDirectories(jars);
        List<String> parts = new ArrayList<>();
        for (String part : classPath.split(File.pathSeparator)) {
            Path path = Path.of(part);
            if (Files.isDirectory(path)) {
                Path jar = jars.resolve("folder" + parts.size() + ".jar");
                pack(path, jar);
                parts.add(jar.toString());
            } else {
                parts.add(part);
            }
        }
        return String.join(File.pathSeparator, parts);
    }

    private static void pack(Path folder, Path jar) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(file -> !file.equals(folder)).toList();
        }
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
            for (Path file : files) {
                // folders too: the migrations are found by theirs
                String name = folder.relativize(file).toString().replace(File.separatorChar, '/');
                out.putNextEntry(new JarEntry(Files.isDirectory(file) ? name + "/" : name));
                if (Files.isRegularFile(file)) {
                    Files.copy(file, out);
                }
                out.closeEntry();
            }
        }
    }
}
