package org.counterpull.pull;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;

/**
 * Results that may be needed again, up to a total weight; the one that was not asked for the
 * longest goes first, the newest always stays.
 */
final class Recent<K, V> {
  private final Map<K, V> kept = new LinkedHashMap<>(16, 0.75f, true);
  private final long most;
  private final ToLongFunction<V> weight;
  private long total;

  Recent(long most, ToLongFunction<V> weight) {
    this.most = most;
    this.weight = weight;
  }

  Optional<V> find(K key) {
    return Optional.ofNullable(kept.get(key));
  }

  void keep(K key, V value) {
    V before = kept.put(key, value);
    total += weight.applyAsLong(value) - (before == null ? 0 : weight.applyAsLong(before));
    Iterator<V> eldest = kept.values().iterator();
    while (total > most && kept.size() > 1) {
      total -= weight.applyAsLong(eldest.next());
      eldest.remove();
    }
  }
}
