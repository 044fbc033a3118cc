package org.counterpull.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.counterpull.report.OutputFolder;

/** Where a command's files go. */
final class Outputs {
  private Outputs() {}

  /**
   * Writes all files or none.
   *
   * @param wanted the folder that the user names; null for one named after the input
   * @param input the file that was read
   * @param kind what is behind the input's name in the folder's, such as {@code plan}
   * @param texts by file name
   * @return the files
   * @throws BadInput when nothing can be written there
   */
  static List<Path> write(Path wanted, Path input, String kind, Map<String, String> texts) {
    Path folder = wanted == null ? Path.of(baseName(input) + "-" + kind) : wanted;
    try {
      return new OutputFolder(folder).write(texts);
    } catch (IOException e) {
      throw new BadInput(
          "--out: nothing can be written to "
              + folder
              + ": "
              + e.getMessage()
              + "\nTry: a folder that you may write to");
    }
  }

  private static String baseName(Path input) {
    String name = input.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }
}
