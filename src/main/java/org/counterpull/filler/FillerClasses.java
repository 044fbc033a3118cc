package org.counterpull.filler;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.filler.FillerClass.GasNeed;

/** The classes kept in {@code filler/classes.csv}; the first that understands a name has it. */
public final class FillerClasses {
  private static final String RESOURCE = "/filler/classes.csv";
  private static final int COLUMNS = 12;
  private static final List<FillerClass> ALL = load();

  private FillerClasses() {}

  /** All classes in the order of the table. */
  public static List<FillerClass> all() {
    return ALL;
  }

  /** The class that a designation means; empty where it is none that is known here. */
  public static Optional<FillerClass> find(String designation) {
    return ALL.stream().filter(c -> c.means(designation)).findFirst();
  }

  /**
   * The usual class for a process and what is joined.
   *
   * @param process welding process
   * @param joined what is joined
   * @param with316 stainless parts are of the 316 kind
   * @return the name of the class; empty where no filler of this process does it
   */
  public static Optional<FillerClass> usual(
      WeldingProcess process, Joined joined, boolean with316) {
    return switch (joined) {
      case CARBON -> named(process, forCarbonSteel(process));
      case QUENCHED_AND_TEMPERED -> named(process, forQuenchedSteel(process));
      case STAINLESS -> named(process, with316 ? "316L" : "308L");
      case STAINLESS_TO_CARBON -> named(process, "309L");
      case ALUMINIUM -> named(process, "5356");
      case CAST_IRON, NOTHING_TOGETHER -> Optional.empty();
    };
  }

  private static Optional<FillerClass> named(WeldingProcess process, String name) {
    return find(name).filter(c -> c.processes().contains(process));
  }

  private static String forCarbonSteel(WeldingProcess process) {
    return switch (process) {
      case MMA -> "E7018";
      case FCAW -> "E71T-1";
      case FCAW_S -> "E71T-11";
      case MAG, MIG, TIG -> "ER70S-6";
    };
  }

  /** As strong as the plate where the process has it, softer where it has not. */
  private static String forQuenchedSteel(WeldingProcess process) {
    return switch (process) {
      case MMA -> "E11018";
      case MAG, MIG, TIG -> "ER110S-G";
      case FCAW -> "E71T-5";
      case FCAW_S -> "E71T-8";
    };
  }

  private static List<FillerClass> load() {
    try (InputStream in = FillerClasses.class.getResourceAsStream(RESOURCE);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return lines.lines().skip(1).map(FillerClasses::row).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static FillerClass row(String line) {
    String[] cells = line.split(";", -1);
    if (cells.length != COLUMNS) {
      throw new IllegalStateException(RESOURCE + ": " + cells.length + " columns in: " + line);
    }
    return new FillerClass(
        cells[0],
        Pattern.compile(cells[1]),
        Arrays.stream(cells[2].split("\\|"))
            .map(word -> WeldingProcess.parse(word).orElseThrow())
            .toList(),
        Arrays.stream(cells[3].split("\\|")).map(Joined::valueOf).toList(),
        Double.parseDouble(cells[4]),
        Double.parseDouble(cells[5]),
        cells[6],
        cells[7].equals("single"),
        cells[8].equals("flat"),
        GasNeed.valueOf(cells[9].toUpperCase(Locale.ROOT)),
        cells[10],
        cells[11]);
  }
}
