package org.counterpull.cli;

import org.counterpull.arc.WeldingProcess;

/** The word behind {@code --process}. */
final class ProcessOption {
  private ProcessOption() {}

  /**
   * The process of that name.
   *
   * @throws BadInput with the names that there are
   */
  static WeldingProcess parse(String word) {
    return WeldingProcess.parse(word)
        .orElseThrow(
            () ->
                new BadInput(
                    "--process: there is no process \""
                        + word
                        + "\"\nTry: "
                        + String.join(", ", WeldingProcess.allWords())));
  }
}
