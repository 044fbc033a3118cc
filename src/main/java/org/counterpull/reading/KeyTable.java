package org.counterpull.reading;

import java.util.List;

/**
 * The keys of one group.
 *
 * @param name of the group, unique
 * @param what one such group is, in words
 * @param keys in the order of the manual
 */
record KeyTable(String name, String what, List<Key> keys) {
  KeyTable {
    keys = List.copyOf(keys);
  }

  List<String> names() {
    return keys.stream().map(Key::name).toList();
  }

  Key key(String name) {
    return keys.stream().filter(k -> k.name().equals(name)).findFirst().orElseThrow();
  }
}
