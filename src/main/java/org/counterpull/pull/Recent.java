package org.counterpull.pull;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Results that may be needed again; the one that was not asked for the longest goes first. */
final class Recent<K, V> {
  private final Map<K, V> kept;

  Recent(int most) {
    kept =
        new LinkedHashMap<>(16, 0.75f, true) {
          @Override
          protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > most;
          }
        };
  }

  Optional<V> find(K key) {
    return Optional.ofNullable(kept.get(key));
  }

  void keep(K key, V value) {
    kept.put(key, value);
  }
}
