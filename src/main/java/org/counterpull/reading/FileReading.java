package org.counterpull.reading;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.counterpull.weldment.Before;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMaterial;
import org.counterpull.weldment.Prices;
import org.counterpull.weldment.Probe;
import org.counterpull.weldment.RunGiven;
import org.counterpull.weldment.ShopMachine;
import org.counterpull.weldment.Surroundings;
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

  /** The model; whatever is wrong stands in the notebook, and then the model isn't complete. */
  Optional<Weldment> read(Node.Table tree) {
    Fields file = Fields.of(book, "", tree, FileKeys.TOP);
    String name = name(file);
    if (!file.has("units")) {
      book.assume("units", "mm");
    }
    Section partSection = Section.of(file, "parts", PartKeys.PART).namesChecked();
    List<PartDraft> drafts = new PartReading(partSection, fileSteel(file)).read();
    List<String> parts = partSection.names();
    if (partSection.isReadable() && parts.isEmpty()) {
      file.problem("parts", "there are no parts", "bar: {stock: flat 60 x 10, length: 900}");
    }
    Section machineSection = Section.of(file, "machines", ShopKeys.MACHINE).namesChecked();
    List<ShopMachine> machines = machineSection.read(MachineReading::read);
    Section jointSection = Section.of(file, "joints", JointKeys.JOINT).namesChecked();
    List<Joint> joints = jointSection.read(new JointReading(parts, machineSection.names())::read);
    FeatureReading places = new FeatureReading(parts, boxes(drafts));
    Section featureSection = Section.of(file, "features", WorkKeys.FEATURE).namesChecked();
    List<Feature> features = featureSection.read(places::feature);
    List<Check> checks =
        Section.of(file, "checks", WorkKeys.CHECK)
            .namesChecked()
            .read(new CheckReading(parts)::read);
    Section fixtureSection = Section.of(file, "fixtures", WorkKeys.FIXTURE).namesChecked();
    List<Fixture> fixtures = fixtureSection.read(new FixtureReading(parts)::read);
    Surroundings surroundings = ShopReading.surroundings(file);
    Optional<Prices> prices = ShopReading.prices(file);
    Map<String, List<String>> kinds = new LinkedHashMap<>();
    kinds.put("joint", jointSection.names());
    kinds.put("part", parts);
    kinds.put("feature", featureSection.names());
    kinds.put("fixture", fixtureSection.names());
    List<Before> before = new BeforeReading(kinds, joints).read(file);
    SequenceReading sequence = new SequenceReading(jointSection.names(), joints);
    Optional<WrittenOrder> order = sequence.order(file);
    List<RunGiven> runs = sequence.runs(Section.of(file, "runs", JointKeys.RUN));
    List<Probe> probes =
        Section.of(file, "probes", JointKeys.PROBE).namesChecked().read(places::probe);
    checkGraph(partSection, drafts, jointSection, joints);
    List<Part> placed = Placements.resolve(partSection, book, drafts);
    if (!book.problems().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Weldment(
            name,
            placed,
            joints,
            features,
            checks,
            machines,
            fixtures,
            surroundings,
            prices,
            before,
            order,
            runs,
            probes,
            book.assumptions()));
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

  private void checkGraph(
      Section parts, List<PartDraft> drafts, Section jointSection, List<Joint> joints) {
    boolean jointsRead = joints.size() == jointSection.names().size();
    if (!jointsRead) {
      return;
    }
    PartGraph graph = new PartGraph(parts.names(), joints);
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
