package org.counterpull.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The weldment file of a command, and where the command writes. */
final class FileAndFolder {
  @Parameters(paramLabel = "FILE", description = "the weldment file, YAML or JSON")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "folder for the files; made if it isn't there; if left out, named after FILE")
  private Path folder;

  Path file() {
    return file;
  }

  /** Writes files into the folder; what has no folder gets one named after the weldment file. */
  List<Path> write(String what, Map<String, String> files) {
    return Outputs.write(folder, file, what, files);
  }
}
