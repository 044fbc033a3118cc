package org.counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.counterpull.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;

/**
 * plan.html in a real browser: on a phone and on paper. Runs where Chromium is; with CI=true it
 * must be.
 */
class PageInBrowserTest {
  private static final int SECONDS = 60;

  @TempDir private Path folder;

  static boolean wanted() {
    return browser().isPresent() || "true".equals(System.getenv("CI"));
  }

  private static Optional<Path> browser() {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
        .flatMap(dir -> Stream.of("chromium", "chromium-browser").map(n -> Path.of(dir, n)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  private String browse(String... more) throws IOException, InterruptedException {
    assertThat(browser()).as("Chromium, which CI installs").isPresent();
    List<String> command =
        new ArrayList<>(
            List.of(
                browser().orElseThrow().toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + folder.resolve("profile")));
    command.addAll(List.of(more));
    Path out = folder.resolve("out.txt");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      throw new AssertionError("the browser took more than " + SECONDS + " s");
    }
    return Files.readString(out, StandardCharsets.UTF_8);
  }

  private Path page() throws IOException {
    return new OutputFolder(folder)
        .write(new PlanReport(SamplePlan.usual(), LengthUnit.MM).files())
        .get(2);
  }

  /** The page in a frame as wide as a phone, with a script that measures it. */
  private Path measured() throws IOException {
    String inside = Files.readString(page(), StandardCharsets.UTF_8);
    String script =
        """
        <script>//<![CDATA[
        window.addEventListener('load', function () {
          var least = 1000;
          document.querySelectorAll('.step *').forEach(function (e) {
            var own = Array.prototype.some.call(e.childNodes, function (n) {
              return n.nodeType === 3; });
            if (own) { least = Math.min(least, parseFloat(getComputedStyle(e).fontSize)); }
          });
          var widest = 0;
          document.querySelectorAll('main *:not(thead):not(thead *)').forEach(function (e) {
            widest = Math.max(widest, e.getBoundingClientRect().right);
          });
          var tick = document.querySelector('.tick').getBoundingClientRect();
          document.documentElement.setAttribute('data-measured', [window.innerWidth,
            document.documentElement.scrollWidth, Math.round(widest), least,
            Math.round(tick.height)].join(' '));
          window.parent.document.documentElement.setAttribute('data-measured',
            document.documentElement.getAttribute('data-measured'));
        });
        //]]></script></body>""";
    Path copy = folder.resolve("copy.html");
    Files.writeString(copy, inside.replace("</body>", script));
    Path frame = folder.resolve("frame.html");
    Files.writeString(
        frame,
        "<!DOCTYPE html><html><body><iframe src=\"copy.html\""
            + " style=\"width:360px;height:800px;border:0\"></iframe></body></html>");
    return frame;
  }

  @Test
  @EnabledIf("wanted")
  void isReadAtAPhonesWidthWithoutSidewaysScroll() throws Exception {
    String dom =
        browse(
            "--allow-file-access-from-files",
            "--virtual-time-budget=4000",
            "--dump-dom",
            measured().toUri().toString());
    Matcher measured =
        Pattern.compile("data-measured=\"(\\d+) (\\d+) (\\d+) ([\\d.]+) (\\d+)\"").matcher(dom);
    assertThat(measured.find()).as("measured at all").isTrue();
    assertThat(measured.group(1)).as("width of the window").isEqualTo("360");
    assertThat(Integer.parseInt(measured.group(2)))
        .as("width of the page")
        .isLessThanOrEqualTo(360);
    assertThat(Integer.parseInt(measured.group(3))).as("widest thing").isLessThanOrEqualTo(360);
    assertThat(Double.parseDouble(measured.group(4)))
        .as("smallest step text, px")
        .isGreaterThanOrEqualTo(18);
    assertThat(Integer.parseInt(measured.group(5)))
        .as("height to touch, px")
        .isGreaterThanOrEqualTo(44);
  }

  @Test
  @EnabledIf("wanted")
  void printsOnAHandfulOfPages() throws Exception {
    Path pdf = folder.resolve("plan.pdf");
    browse("--no-pdf-header-footer", "--print-to-pdf=" + pdf, page().toUri().toString());
    String bytes = Files.readString(pdf, StandardCharsets.ISO_8859_1);
    long pages = Pattern.compile("/Type\\s*/Page[^s]").matcher(bytes).results().count();
    assertThat(pages).isBetween(5L, 16L);
  }
}
