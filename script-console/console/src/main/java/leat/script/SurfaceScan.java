package leat.script;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Lists the classes of packages by looking into the class folders and jars that hold them; sorted by name. */
final class SurfaceScan {

    private static final String SUFFIX = ".class";

    private SurfaceScan() {}

    static List<Class<?>> classesIn(List<String> packages) {
        SortedSet<String> names = new TreeSet<>();
        for (String each : packages) {
            String folder = each.replace('.', '/');
            try {
                for (URL place :
                        Collections.list(SurfaceScan.class.getClassLoader().getResources(folder))) {
                    names.addAll(namesAt(place, folder));
                }
            } catch (IOException failure) {
                throw new UncheckedIOException("cannot list the classes of " + each, failure);
            }
        }
        List<Class<?>> classes = new ArrayList<>();
        names.forEach(name -> classes.add(load(name)));
        return classes;
    }

    private static List<String> namesAt(URL place, String folder) throws IOException {
        if (place.getProtocol().equals("jar")) {
            JarURLConnection connection = (JarURLConnection) place.openConnection();
            connection.setUseCaches(false);
            try (var jar = connection.getJarFile()) {
                return jar.stream()
                        .map(entry -> entry.getName())
                        .filter(name -> name.startsWith(folder + "/") && isClass(name))
                        .toList();
            }
        }
        Path root = folderOf(place);
        try (Stream<Path> files = Files.walk(root)) {
            return files.map(file ->
                            folder + "/" + root.relativize(file).toString().replace('\\', '/'))
                    .filter(SurfaceScan::isClass)
                    .toList();
        }
    }

    private static boolean isClass(String file) {
        return file.endsWith(SUFFIX) && !file.endsWith("-info" + SUFFIX);
    }

    private static Path folderOf(URL place) {
        try {
            URI uri = place.toURI();
            return Path.of(uri);
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException("class folder " + place, impossible);
        }
    }

    private static Class<?> load(String file) {
        String name = file.substring(0, file.length() - SUFFIX.length()).replace('/', '.');
        try {
            return Class.forName(name, false, SurfaceScan.class.getClassLoader());
        } catch (ClassNotFoundException impossible) {
            throw new IllegalStateException("listed but not found: " + name, impossible);
        }
    }
}
