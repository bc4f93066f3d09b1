package leat.script;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import jdk.jshell.execution.LoaderDelegate;
import jdk.jshell.spi.ExecutionControl.ClassBytecodes;
import org.jspecify.annotations.Nullable;

/**
 * Loads the snippets of one session. The loader is also the token by which they find that session, so that several
 * sessions can run in one process and nothing is kept in static fields.
 */
final class SnippetLoader implements LoaderDelegate {

    private final Door door;

    SnippetLoader(SessionFunctions functions) {
        door = new Door(functions);
    }

    JavaDoor door() {
        return door;
    }

    @Override
    public void load(ClassBytecodes[] classes) {
        for (ClassBytecodes each : classes) {
            door.known.put(each.name(), each.bytecodes());
        }
    }

    @Override
    public void classesRedefined(ClassBytecodes[] classes) {
        load(classes);
    }

    @Override
    public void addToClasspath(String path) {
        // told of what the compiler looks at, which our own loader has already
    }

    @Override
    public Class<?> findClass(String name) throws ClassNotFoundException {
        return door.loadClass(name);
    }

    private static final class Door extends ClassLoader implements JavaDoor {

        private final Map<String, byte[]> known = new ConcurrentHashMap<>();
        private final SessionFunctions functions;
        private @Nullable Object handed;

        Door(SessionFunctions functions) {
            super(SnippetLoader.class.getClassLoader());
            this.functions = functions;
        }

        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            byte[] bytes = known.get(name);
            if (bytes == null) {
                throw new ClassNotFoundException(name);
            }
            return defineClass(name, bytes, 0, bytes.length);
        }

        @Override
        public SessionFunctions functions() {
            return functions;
        }

        @Override
        public void hand(@Nullable Object value) {
            handed = value;
        }

        @Override
        public @Nullable Object handed() {
            return handed;
        }
    }
}
