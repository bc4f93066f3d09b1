package leat.script;

import java.lang.ref.Reference;
import java.lang.ref.ReferenceQueue;
import java.lang.ref.WeakReference;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Remembers the view of each value for as long as the script holds it. A quantity is found again by its figure, any
 * other value only by being the very same one: comparing whole plans would cost more than it tells.
 */
final class ViewCache {

    private final Map<Key, WeakReference<ScriptView>> views = new HashMap<>();
    private final ReferenceQueue<Object> gone = new ReferenceQueue<>();

    ScriptView computeIfAbsent(Object host, Supplier<ScriptView> maker) {
        for (Reference<?> key = gone.poll(); key != null; key = gone.poll()) {
            views.remove(key);
        }
        Key key = new Key(host, gone);
        WeakReference<ScriptView> known = views.get(key);
        ScriptView view = known == null ? null : known.get();
        if (view == null) {
            view = maker.get();
            views.remove(key); // a key whose view is gone would be kept by put, and its value cleared before its time
            views.put(key, new WeakReference<>(view));
        }
        return view;
    }

    private static final class Key extends WeakReference<Object> {

        private final int hash;
        private final boolean byFigure;

        Key(Object host, ReferenceQueue<Object> gone) {
            super(host, gone);
            byFigure = Types.figure(host).isPresent();
            hash = byFigure ? host.hashCode() : System.identityHashCode(host);
        }

        @Override
        public int hashCode() {
            return hash;
        }

        @Override
        public boolean equals(@Nullable Object other) {
            if (this == other) {
                return true;
            }
            Object mine = get();
            Object its = other instanceof Key key ? key.get() : null;
            return mine != null && its != null && (byFigure ? mine.equals(its) : mine == its);
        }
    }
}
