package org.counterpull.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.counterpull.access.Tool;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Weldment;

/** What features ask for before the first arc and after the last. */
final class FeatureSteps {
  /** What is left in a hole that is finished after welding, mm on the diameter. */
  private static final double STOCK_LEFT_MM = 0.5;

  private FeatureSteps() {}

  static void add(Steps all) {
    for (Feature feature : all.weldment().features()) {
      switch (feature.kind()) {
        case HOLE, BORE -> hole(all, feature);
        case THREAD -> thread(all, feature);
        case GREASE_FITTING -> {
          thread(all, feature);
          late(all, StepTag.FIT_NIPPLE, feature, "Fit nipple " + feature.name() + " and grease it");
        }
        case MACHINED_FACE -> mask(all, feature, "Cover", "Uncover");
        case SEAL, BEARING -> sensitive(all, feature);
        case COATING -> coating(all, feature);
        case CAPTIVE_PIECE -> captive(all, feature);
        case GAS_STRUT, ACCUMULATOR -> takenOff(all, feature);
        case VESSEL -> {
          // Nothing is done to it: it is opened and cleaned before this work, or refused.
        }
      }
    }
    for (Cavities.Cavity cavity : Cavities.of(all.weldment(), all.joints())) {
      vent(all, cavity);
    }
  }

  private static Steps.Draft draft(StepTag tag, Feature feature, String what) {
    return new Steps.Draft(tag, feature.name(), what, feature.name())
        .parts(feature.parts())
        .subject(feature.name());
  }

  private static void add(Steps all, StepTag tag, Feature feature, String what) {
    all.add(draft(tag, feature, what).times(each(tag, feature)));
  }

  /** A step after welding, tied to the parts that take its tool's way. */
  private static void late(Steps all, StepTag tag, Feature feature, String what) {
    all.add(
        draft(tag, feature, what)
            .times(each(tag, feature))
            .links(links(all.ways().of(feature, Ways.late(feature)))));
  }

  private static void drill(Steps all, Feature feature, String what) {
    all.add(
        draft(StepTag.DRILL, feature, what)
            .times(each(StepTag.DRILL, feature))
            .links(links(all.ways().of(feature, Tool.DRILL))));
  }

  private static List<String> links(Set<String> inTheWay) {
    return inTheWay.stream().map(Step::partLink).toList();
  }

  private static void takenOff(Steps all, Feature feature) {
    if (feature.removable()) {
      add(all, StepTag.REMOVE_SENSITIVE, feature, "Take off " + feature.name());
      late(all, StepTag.REFIT, feature, "Put " + feature.name() + " back");
    }
  }

  private static int each(StepTag tag, Feature feature) {
    return tag.kind() == Operation.Kind.STRIP ? 1 : Math.max(1, feature.parts().size());
  }

  private static void hole(Steps all, Feature feature) {
    boolean fitted = feature.turnsOnMm().isPresent() || feature.tolerance().isPresent();
    boolean ownBore =
        feature.kind() == Feature.Kind.BORE
            && feature.parts().stream()
                .allMatch(part -> all.weldment().part(part).stock() instanceof RoundTube);
    String size = feature.diameterMm().map(d -> " " + Steps.mm(d) + " mm").orElse("");
    if (fitted && !ownBore) {
      String pilot =
          feature.diameterMm().map(d -> " " + Steps.mm(d - STOCK_LEFT_MM) + " mm").orElse("");
      drill(all, feature, "Drill " + feature.name() + " undersize" + pilot);
    } else if (!ownBore) {
      drill(all, feature, "Drill " + feature.name() + size);
    }
    if (fitted) {
      String pin = feature.turnsOnMm().map(d -> "pin " + Steps.mm(d) + " mm").orElse("a gauge");
      late(all, StepTag.REAM, feature, finishing(feature, ownBore, pin, size));
    }
  }

  private static String finishing(Feature feature, boolean ownBore, String pin, String size) {
    if (!ownBore) {
      return "Finish " + feature.name() + " to" + size;
    }
    boolean runsIn = feature.turnsOnMm().isEmpty();
    return runsIn
        ? "Gauge "
            + feature.name()
            + " in three planes; hone to"
            + size
            + feature.tolerance().map(t -> " " + t).orElse("")
            + " where it is tight"
        : "Try " + pin + " in " + feature.name() + "; ream" + size + " where it binds";
  }

  private static void thread(Steps all, Feature feature) {
    drill(all, feature, "Drill and tap " + feature.name());
    mask(all, feature, "Plug", "Unplug");
    all.add(
        draft(StepTag.CHASE, feature, "Run a tap through " + feature.name())
            .times(each(StepTag.CHASE, feature))
            .links(links(all.ways().of(feature, Tool.TAP))));
  }

  private static void mask(Steps all, Feature feature, String on, String off) {
    add(all, StepTag.MASK, feature, on + " " + feature.name() + " against spatter");
    add(all, StepTag.UNMASK, feature, off + " " + feature.name());
  }

  private static void sensitive(Steps all, Feature feature) {
    if (feature.removable()) {
      String kind = feature.kind().words();
      add(all, StepTag.REMOVE_SENSITIVE, feature, "Take out " + kind + " " + feature.name());
      String what = feature.kind() == Feature.Kind.SEAL ? "Fit a new seal for " : "Refit bearing ";
      late(all, StepTag.REFIT, feature, what + feature.name());
    }
  }

  private static void coating(Steps all, Feature feature) {
    String width =
        feature.material().map(FeatureSteps::burnsToBadFume).orElse(false) ? "100 mm" : "50 mm";
    String what = feature.material().orElse("coating");
    add(
        all,
        StepTag.STRIP_COATING,
        feature,
        "Strip " + what + " " + width + " each side of every weld line");
  }

  private static boolean burnsToBadFume(String material) {
    String lower = material.toLowerCase(java.util.Locale.ROOT);
    return List.of("zinc", "galvan", "lead", "cadmium", "chrom", "two-pack", "polyurethane")
        .stream()
        .anyMatch(lower::contains);
  }

  /**
   * The joints of the host that is fitted last close over the piece; a single host's last
   * neighbour.
   */
  private static void captive(Steps all, Feature feature) {
    Weldment weldment = all.weldment();
    TreeSet<String> candidates = new TreeSet<>(feature.parts());
    boolean oneHost = candidates.size() == 1;
    if (oneHost) {
      weldment.joints().stream()
          .filter(joint -> touches(joint, feature.parts()))
          .forEach(joint -> candidates.addAll(List.of(joint.first(), joint.second())));
    }
    Comparator<String> fittedLast = Comparator.comparingInt(all.fitOrder()::of);
    String closing = candidates.stream().max(fittedLast).orElseThrow();
    List<String> links = new ArrayList<>();
    if (oneHost && !feature.parts().contains(closing)) {
      links.add(Step.partLink(closing));
    }
    weldment.joints().stream()
        .filter(joint -> touches(joint, List.of(closing)))
        .filter(joint -> !oneHost || touches(joint, feature.parts()))
        .forEach(joint -> links.add(Step.jointLink(joint.name())));
    all.add(
        draft(StepTag.INSERT, feature, "Put in " + feature.name() + " before it is closed over")
            .links(links)
            .turn(all.fitOrder().of(closing)));
  }

  private static boolean touches(Joint joint, List<String> parts) {
    return parts.contains(joint.first()) || parts.contains(joint.second());
  }

  private static void vent(Steps all, Cavities.Cavity cavity) {
    all.add(
        new Steps.Draft(
                StepTag.VENT,
                cavity.part(),
                "Drill a vent of 3 mm or more into " + cavity.part(),
                cavity.part())
            .parts(List.of(cavity.part()))
            .subject(cavity.part())
            .links(cavity.runs().stream().map(Step::runLink).toList())
            .why("For galvanising it takes larger holes, by the galvaniser's table."));
  }
}
