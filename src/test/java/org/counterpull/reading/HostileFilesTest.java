package org.counterpull.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that nobody would write by hand: each gets a plain answer, and quickly. */
class HostileFilesTest {
  private static final String GOOD =
      "weldment: x\nunits: mm\nsteel: S275JR\nparts:\n"
          + "  bar: {stock: flat 60 x 10, length: 600, loose: true}\n";

  private static final String MARKS = "{}[]:,#&*!|>'\"%@`?- \t\n\\";

  @TempDir Path folder;

  private List<Problem> problems(byte[] bytes, String ending) throws IOException {
    Path file = folder.resolve("file." + ending);
    Files.write(file, bytes);
    ReadResult result = WeldmentReader.read(file);
    assertThat(result).isInstanceOf(ReadResult.Faulty.class);
    List<Problem> problems = ((ReadResult.Faulty) result).problems();
    assertThat(problems)
        .allSatisfy(
            p -> {
              assertThat(p.line()).isPositive();
              assertThat(p.column()).isPositive();
              assertThat(p.what()).isNotBlank();
              assertThat(p.tryThis()).isNotBlank();
            });
    return problems;
  }

  private Problem only(byte[] bytes, String ending) throws IOException {
    List<Problem> problems = problems(bytes, ending);
    assertThat(problems).hasSize(1);
    return problems.get(0);
  }

  private Problem only(String text) throws IOException {
    return only(text.getBytes(StandardCharsets.UTF_8), "yaml");
  }

  @ParameterizedTest
  @ValueSource(strings = {"yaml", "json"})
  void nothingAtAll(String ending) throws IOException {
    assertThat(only(new byte[0], ending).what()).isEqualTo("the file is empty");
    assertThat(only("\n \n".getBytes(StandardCharsets.UTF_8), ending).what())
        .isEqualTo("the file is empty");
  }

  @Test
  void fiftyMegabytes() throws IOException {
    Path file = folder.resolve("large.yaml");
    try (OutputStream out = Files.newOutputStream(file)) {
      byte[] line = "  # nothing but notes, again and again and again\n".repeat(20_000).getBytes();
      for (int i = 0; i < 50; i++) {
        out.write(line);
      }
    }
    assertThat(Files.size(file)).isGreaterThan(45_000_000);
    ReadResult.Faulty result = (ReadResult.Faulty) WeldmentReader.read(file);
    assertThat(result.problems()).hasSize(1);
    assertThat(result.problems().get(0).what()).isEqualTo("the file is larger than 5 MB");
  }

  @ParameterizedTest
  @ValueSource(strings = {"yaml", "json"})
  void deepNesting(String ending) throws IOException {
    String deep = "[".repeat(100_000) + "]".repeat(100_000);
    Problem problem = only(deep.getBytes(StandardCharsets.UTF_8), ending);
    assertThat(problem.what()).contains("nested deeper than 24");
    assertThat(problem.column()).isEqualTo(25);
  }

  @Test
  void deepNestingByIndent() throws IOException {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 1000; i++) {
      text.append(" ".repeat(i)).append("a:\n");
    }
    assertThat(only(text.toString()).what()).contains("nested deeper than 24");
  }

  @Test
  void aliasBomb() throws IOException {
    StringBuilder text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 12; i++) {
      String other = "*a" + (i - 1);
      text.append("a" + i + ": &a" + i + " [")
          .append(String.join(", ", Collections.nCopies(9, other)))
          .append("]\n");
    }
    List<Problem> problems = problems(text.toString().getBytes(StandardCharsets.UTF_8), "yaml");
    assertThat(problems).anySatisfy(p -> assertThat(p.what()).contains("is an anchor"));
    assertThat(problems).anySatisfy(p -> assertThat(p.what()).contains("is a reference"));
    assertThat(problems).hasSizeLessThanOrEqualTo(201);
  }

  @Test
  void thousandsOfProblemsAreCountedNotListed() throws IOException {
    StringBuilder text = new StringBuilder(GOOD);
    for (int i = 0; i < 3000; i++) {
      text.append("  p" + i + ": {stock: flet 1 x 1, length: 0, start: [0, 0, 0], loose: true}\n");
    }
    List<Problem> problems = problems(text.toString().getBytes(StandardCharsets.UTF_8), "yaml");
    assertThat(problems).hasSize(201);
    assertThat(problems.get(200).what()).contains("5800 more problems than the 200 listed");
  }

  @Test
  void moreEntriesThanAnyWeldment() throws IOException {
    StringBuilder text = new StringBuilder("parts:\n");
    for (int i = 0; i < 5001; i++) {
      text.append("  p" + i + ": 1\n");
    }
    assertThat(only(text.toString()).what()).contains("more than 5000 entries");
  }

  @Test
  void longChainsOfLikeAndOnto() throws IOException {
    StringBuilder like = new StringBuilder(GOOD);
    StringBuilder onto = new StringBuilder(GOOD);
    for (int i = 0; i < 4000; i++) {
      String next = i == 3999 ? "bar" : "p" + (i + 1);
      like.append("  p" + i + ": {like: " + next + "}\n");
      onto.append("  p" + i + ": {stock: plate 1 x 1, length: 1, loose: true, onto: " + next)
          .append(", face: top}\n");
    }
    assertThat(problems(like.toString().getBytes(StandardCharsets.UTF_8), "yaml"))
        .anySatisfy(p -> assertThat(p.what()).contains("leads on through more than 50"));
    Path file = Files.writeString(folder.resolve("onto.yaml"), onto);
    assertThat(WeldmentReader.read(file)).isInstanceOf(ReadResult.Read.class);
  }

  @Test
  void binaryFile() throws IOException {
    byte[] bytes = new byte[4000];
    new Random(5).nextBytes(bytes);
    Problem problem = only(bytes, "yaml");
    assertThat(problem.what()).isEqualTo("this is no text but a binary file");
    byte[] zip = {'P', 'K', 3, 4, 20, 0, 8, 8};
    assertThat(only(zip, "yaml").what()).isEqualTo("this is no text but a binary file");
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE"})
  void utf16(String charset) throws IOException {
    Problem problem = only(GOOD.getBytes(Charset.forName(charset)), "yaml");
    assertThat(problem.what()).isEqualTo("the text is UTF-16, not UTF-8");
    assertThat(problem.tryThis()).contains("UTF-8");
  }

  @Test
  void latin1IsFoundAtItsPlace() throws IOException {
    byte[] bytes = GOOD.replace("x\n", "T\u00fcr\n").getBytes(StandardCharsets.ISO_8859_1);
    Problem problem = only(bytes, "yaml");
    assertThat(problem.what()).isEqualTo("byte FC is not UTF-8 text");
    assertThat(problem.line()).isEqualTo(1);
    assertThat(problem.column()).isEqualTo(12);
  }

  @Test
  void controlCharactersAreFoundAtTheirPlace() throws IOException {
    Problem problem = only(GOOD.replace("flat", "fl\u001bat"));
    assertThat(problem.what()).isEqualTo("there is a control character (U+001B)");
    assertThat(problem.line()).isEqualTo(5);
    assertThat(problem.column()).isEqualTo(18);
  }

  @Test
  void byteOrderMarkAndWindowsLineEndsAreNoProblem() throws IOException {
    Path file = folder.resolve("bom.yaml");
    Files.writeString(file, "\uFEFF" + GOOD.replace("\n", "\r\n"));
    assertThat(WeldmentReader.read(file)).isInstanceOf(ReadResult.Read.class);
  }

  @Test
  void noFileAndAFolder() {
    ReadResult.Faulty none = (ReadResult.Faulty) WeldmentReader.read(folder.resolve("none.yaml"));
    assertThat(none.problems().get(0).what()).isEqualTo("there is no such file");
    ReadResult.Faulty dir = (ReadResult.Faulty) WeldmentReader.read(folder);
    assertThat(dir.problems().get(0).what()).isEqualTo("this is no file");
  }

  /** 2000 broken copies of good files: an answer each time, never an exception. */
  @Test
  void mutationsNeverEscape() throws IOException {
    Random random = new Random(20260101);
    List<Path> good = new ArrayList<>(WeldmentSchemaTest.goodFiles());
    List<byte[]> texts = new ArrayList<>();
    for (Path file : good) {
      texts.add(Files.readAllBytes(file));
    }
    int faulty = 0;
    for (int i = 0; i < 2000; i++) {
      int which = random.nextInt(good.size());
      byte[] mutated = texts.get(which);
      for (int k = random.nextInt(3); k >= 0; k--) {
        mutated = mutate(mutated, random);
      }
      String name = good.get(which).getFileName().toString();
      Path file = folder.resolve("mutant" + name.substring(name.lastIndexOf('.')));
      Files.write(file, mutated);
      ReadResult result = WeldmentReader.read(file);
      if (result instanceof ReadResult.Faulty f) {
        faulty++;
        assertThat(f.problems()).isNotEmpty();
        assertThat(f.problems()).allMatch(p -> p.line() > 0 && p.column() > 0);
        assertThat(f.problems()).noneMatch(p -> p.tryThis().isBlank() || p.what().isBlank());
      }
    }
    assertThat(faulty).isBetween(1000, 1999);
  }

  private static byte[] mutate(byte[] bytes, Random random) {
    if (bytes.length < 4) {
      return bytes;
    }
    int at = random.nextInt(bytes.length - 1);
    byte[] copy = bytes.clone();
    switch (random.nextInt(6)) {
      case 0 -> {
        return Arrays.copyOf(bytes, at);
      }
      case 1 -> {
        copy[at] = bytes[at + 1];
        copy[at + 1] = bytes[at];
        return copy;
      }
      case 2 -> {
        copy[at] = (byte) random.nextInt(256);
        return copy;
      }
      case 3 -> {
        return without(bytes, at, at + 1 + random.nextInt(3));
      }
      case 4 -> {
        copy[at] = (byte) MARKS.charAt(random.nextInt(MARKS.length()));
        return copy;
      }
      default -> {
        return lineTwice(bytes, random);
      }
    }
  }

  private static byte[] without(byte[] bytes, int from, int to) {
    int end = Math.min(to, bytes.length);
    byte[] copy = new byte[bytes.length - (end - from)];
    System.arraycopy(bytes, 0, copy, 0, from);
    System.arraycopy(bytes, end, copy, from, bytes.length - end);
    return copy;
  }

  private static byte[] lineTwice(byte[] bytes, Random random) {
    List<String> lines =
        new ArrayList<>(new String(bytes, StandardCharsets.ISO_8859_1).lines().toList());
    int at = random.nextInt(lines.size());
    lines.add(random.nextInt(lines.size()), lines.get(at));
    return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
  }
}
