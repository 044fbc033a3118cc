package org.counterpull.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A folder that files are written to all together or not at all.
 *
 * <p>Everything is first written in full under temporary names beside the targets; only when that
 * has worked are the files moved into place. If a move fails, those already moved are put back. So
 * an existing file is never half overwritten, and a full disk leaves the old plan as it was.
 */
public final class OutputFolder {
  private static final String OLD = ".old";
  private static final int MOST_DRAFTS = 1000;

  private final Path folder;

  public OutputFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * Writes texts as UTF-8.
   *
   * @param texts by file name; names have no folders in them
   * @return the files, in the order of {@code texts}
   * @throws IOException when it can't be done; nothing has changed then
   */
  public List<Path> write(Map<String, String> texts) throws IOException {
    for (String name : texts.keySet()) {
      if (!Path.of(name).equals(Path.of(name).getFileName())) {
        throw new IllegalArgumentException("no plain file name: " + name);
      }
    }
    Files.createDirectories(folder);
    Map<Path, Path> staged = new LinkedHashMap<>();
    try {
      for (Map.Entry<String, String> entry : texts.entrySet()) {
        Path target = folder.resolve(entry.getKey());
        if (Files.isDirectory(target)) {
          throw new IOException(target + " is a folder");
        }
        Path draft = draft(entry.getKey());
        staged.put(target, draft);
        Files.writeString(
            draft, entry.getValue(), StandardCharsets.UTF_8, StandardOpenOption.TRUNCATE_EXISTING);
      }
      moveAll(staged);
    } finally {
      for (Path draft : staged.values()) {
        Files.deleteIfExists(draft);
      }
    }
    return List.copyOf(staged.keySet());
  }

  /** A new empty file beside the target, with the rights that files usually get here. */
  private Path draft(String name) throws IOException {
    for (int i = 0; ; i++) {
      try {
        return Files.createFile(folder.resolve("." + name + "." + i + ".new"));
      } catch (FileAlreadyExistsException e) {
        if (i >= MOST_DRAFTS) {
          throw e;
        }
      }
    }
  }

  private static void moveAll(Map<Path, Path> staged) throws IOException {
    Map<Path, Path> kept = new LinkedHashMap<>();
    List<Path> moved = new ArrayList<>();
    try {
      for (Map.Entry<Path, Path> entry : staged.entrySet()) {
        Path target = entry.getKey();
        if (Files.exists(target)) {
          Path old = entry.getValue().resolveSibling(entry.getValue().getFileName() + OLD);
          Files.copy(target, old, StandardCopyOption.COPY_ATTRIBUTES);
          kept.put(target, old);
        }
        move(entry.getValue(), target);
        moved.add(target);
      }
    } catch (IOException e) {
      for (Path target : moved) {
        Path old = kept.get(target);
        if (old == null) {
          Files.deleteIfExists(target);
        } else {
          move(old, target);
        }
      }
      throw e;
    } finally {
      for (Path old : kept.values()) {
        Files.deleteIfExists(old);
      }
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
