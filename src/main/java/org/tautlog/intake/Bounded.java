package org.tautlog.intake;

import java.util.LinkedHashMap;
import java.util.Map;

/** Maps that forget their oldest entry when they are full. */
final class Bounded {
    private Bounded() {}

    static <K, V> Map<K, V> map(int most) {
        return new Oldest<>(most);
    }

    private static final class Oldest<K, V> extends LinkedHashMap<K, V> {
        private static final long serialVersionUID = 1L;
        private final int most;

        Oldest(int most) {
            this.most = most;
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
        }
    }
}
