package org.counterpull.reading;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.counterpull.weldment.Before;
import org.counterpull.weldment.Calibration;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.OwnRule;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMaterial;
import org.counterpull.weldment.Prices;
import org.counterpull.weldment.Probe;
import org.counterpull.weldment.RunGiven;
import org.counterpull.weldment.ShopMachine;
import org.counterpull.weldment.StockRoom;
import org.counterpull.weldment.Surroundings;
import org.counterpull.weldment.Swing;
import org.counterpull.weldment.Weldment;
import org.counterpull.weldment.WrittenOrder;

/** Reads the sections of a file, each with what it needs of the others. */
final class FileReading {
  private final Notebook book;
  private final Path path;

  FileReading(Notebook book, Path path) {
    this.book = book;
    this.path = path;
  }

  /** What is read of the shop. */
  private record Shop(
      List<ShopMachine> machines,
      List<String> machineNames,
      Surroundings surroundings,
      Optional<Prices> prices,
      StockRoom stockRoom,
      List<Calibration> calibrations) {}

  /** What is read of the things on parts. */
  private record Work(
      List<Feature> features,
      List<String> featureNames,
      List<Check> checks,
      List<Fixture> fixtures,
      List<String> fixtureNames,
      List<Probe> probes) {}

  /** The model; whatever is wrong stands in the notebook, and then there is no model. */
  Optional<Weldment> read(Node.Table tree) {
    Fields file = Fields.of(book, "", tree, FileKeys.TOP);
    String name = name(file);
    if (!file.has("units")) {
      book.assume("units", "mm");
    }
    Section parts = Section.of(file, "parts", PartKeys.PART).namesChecked();
    List<PartDraft> drafts = new PartReading(parts, fileSteel(file)).read();
    if (parts.isReadable() && parts.names().isEmpty()) {
      file.problem("parts", "there are no parts", "bar: {stock: flat 60 x 10, length: 900}");
    }
    Shop shop = shop(file);
    Section joints = Section.of(file, "joints", JointKeys.JOINT).namesChecked();
    JointReading jointReading = new JointReading(parts.names(), shop.machineNames());
    List<Joint> read = joints.read(jointReading::read);
    Work work = work(file, parts.names(), drafts);
    List<Before> before = new BeforeReading(kinds(joints, parts, work), read).read(file);
    SequenceReading sequence =
        new SequenceReading(
            joints.names(),
            read,
            Section.of(file, "runs", JointKeys.RUN),
            new FeatureReading(parts.names(), boxes(drafts)));
    Optional<WrittenOrder> order = sequence.order(file);
    List<RunGiven> runs = sequence.runs();
    MotionReading motion = new MotionReading(parts.names());
    List<Swing> swings =
        Section.of(file, "swings", MotionKeys.SWING).namesChecked().read(motion::swing);
    List<OwnRule> rules =
        Section.of(file, "rules", MotionKeys.RULE).namesChecked().read(MotionReading::rule);
    jointReading.ties().ifPresent(ties -> checkGraph(parts, drafts, ties));
    List<Part> placed = Placements.resolve(parts, book, drafts);
    if (!book.problems().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Weldment(
            name,
            placed,
            read,
            work.features(),
            work.checks(),
            shop.machines(),
            work.fixtures(),
            shop.surroundings(),
            shop.prices(),
            before,
            order,
            runs,
            work.probes(),
            book.assumptions(),
            shop.calibrations(),
            rules,
            swings,
            shop.stockRoom()));
  }

  private static Shop shop(Fields file) {
    Section machines = Section.of(file, "machines", ShopKeys.MACHINE).namesChecked();
    return new Shop(
        machines.read(MachineReading::read),
        machines.names(),
        ShopReading.surroundings(file),
        ShopReading.prices(file),
        ShopReading.stockRoom(file),
        Section.of(file, "calibration", ShopKeys.CALIBRATION)
            .namesChecked()
            .read(CalibrationReading::read));
  }

  private static Work work(Fields file, List<String> parts, List<PartDraft> drafts) {
    FeatureReading places = new FeatureReading(parts, boxes(drafts));
    Section features = Section.of(file, "features", WorkKeys.FEATURE).namesChecked();
    Section checks = Section.of(file, "checks", WorkKeys.CHECK).namesChecked();
    Section fixtures = Section.of(file, "fixtures", WorkKeys.FIXTURE).namesChecked();
    Section probes = Section.of(file, "probes", JointKeys.PROBE).namesChecked();
    return new Work(
        features.read(places::feature),
        features.names(),
        checks.read(new CheckReading(parts)::read),
        fixtures.read(new FixtureReading(parts)::read),
        fixtures.names(),
        probes.read(places::probe));
  }

  private static Map<String, List<String>> kinds(Section joints, Section parts, Work work) {
    Map<String, List<String>> kinds = new LinkedHashMap<>();
    kinds.put("joint", joints.names());
    kinds.put("part", parts.names());
    kinds.put("feature", work.featureNames());
    kinds.put("fixture", work.fixtureNames());
    return kinds;
  }

  private String name(Fields file) {
    if (file.has("weldment")) {
      return file.text("weldment").orElse("");
    }
    String name = String.valueOf(path.getFileName()).replaceFirst("\\.[^.]*$", "");
    book.assume("weldment", "named after its file: " + name);
    return name;
  }

  /** Steel of parts that name none; empty when it is wrong. */
  private Optional<PartMaterial> fileSteel(Fields file) {
    if (file.has("steel")) {
      return file.get("steel").flatMap(SteelReading::read);
    }
    book.assume("steel", "unknown for parts that name none: restrictions apply");
    return Optional.of(SteelReading.unknown());
  }

  private static Map<String, Box> boxes(List<PartDraft> drafts) {
    Map<String, Box> boxes = new LinkedHashMap<>();
    drafts.forEach(d -> boxes.put(d.name(), d.body().box()));
    return boxes;
  }

  private void checkGraph(Section parts, List<PartDraft> drafts, List<JointReading.Tie> ties) {
    PartGraph graph = new PartGraph(parts.names(), ties);
    Set<String> allowed = new TreeSet<>();
    drafts.stream().filter(PartDraft::loose).forEach(d -> allowed.add(d.name()));
    Set<String> read = new TreeSet<>();
    drafts.forEach(d -> read.add(d.name()));
    for (String part : graph.alone()) {
      if (!allowed.contains(part) && read.contains(part)) {
        parts
            .entry(part)
            .ifPresent(
                e ->
                    book.problems()
                        .add(
                            e.keyPlace(),
                            "parts." + part,
                            part + " is in no joint: nothing holds it",
                            "a joint between it and another part, or loose: true"));
      }
    }
    List<List<String>> groups = graph.groups();
    if (groups.size() > 1) {
      StringBuilder words = new StringBuilder("no joint ties these pieces to each other");
      groups.forEach(g -> words.append("; ").append(String.join(", ", g)));
      book.assume("joints", words.toString());
    }
  }
}
