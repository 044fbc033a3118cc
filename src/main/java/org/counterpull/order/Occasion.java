package org.counterpull.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.solid.Solid;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Pieces;
import org.counterpull.weldment.SpokenOf;
import org.counterpull.weldment.Swing;
import org.counterpull.weldment.Weldment;

/** What on a weldment asks for a step of its own, and where. */
enum Occasion {
  SPOKEN_OF {
    @Override
    List<Place> places(Steps all, List<String> words) {
      Optional<String> name = SpokenOf.name(all.weldment(), words);
      return name.map(n -> List.of(new Place("", n, "", List.of()))).orElse(List.of());
    }
  },
  EACH_PIECE {
    @Override
    List<Place> places(Steps all, List<String> words) {
      List<Place> places = new ArrayList<>();
      for (List<String> piece : Pieces.of(all.weldment())) {
        String base =
            all.fitOrder().bases().stream().filter(piece::contains).findFirst().orElse("");
        boolean welded =
            all.joints().stream()
                .anyMatch(p -> piece.contains(p.joint().first()) && !p.runs().isEmpty());
        if (welded && !clampGiven(all.weldment(), piece)) {
          places.add(new Place(base, base, base, List.of(base)));
        }
      }
      return places;
    }
  },
  OILY {
    @Override
    List<Place> places(Steps all, List<String> words) {
      return features(all, Occasion::oily);
    }
  },
  ALUMINIUM {
    @Override
    List<Place> places(Steps all, List<String> words) {
      List<String> parts =
          all.joints().stream()
              .flatMap(p -> List.of(p.joint().first(), p.joint().second()).stream())
              .distinct()
              .filter(name -> Circumstance.isAluminium(all.weldment().part(name)))
              .toList();
      return parts.isEmpty()
          ? List.of()
          : List.of(new Place("aluminium", Steps.names(parts), Steps.names(parts), parts));
    }
  },
  EAR_PAIR {
    @Override
    List<Place> places(Steps all, List<String> words) {
      return EarPairs.of(all.weldment()).stream()
          .filter(pair -> !pair.isHeld(all.weldment()))
          .map(pair -> new Place(pair.name(), pair.words(), pair.words(), pair.parts()))
          .toList();
    }
  },
  OPEN_FRAME {
    @Override
    List<Place> places(Steps all, List<String> words) {
      return OpenFrames.of(all.weldment()).stream()
          .map(f -> new Place("frame of " + f.get(0), Steps.names(f), Steps.names(f), f))
          .toList();
    }
  },
  REPEATED_JOINT {
    @Override
    List<Place> places(Steps all, List<String> words) {
      Map<String, List<String>> alike = new LinkedHashMap<>();
      for (JointPlan plan : all.joints()) {
        if (!plan.runs().isEmpty()) {
          alike.computeIfAbsent(alike(all, plan), k -> new ArrayList<>()).add(plan.joint().name());
        }
      }
      return alike.values().stream()
          .filter(names -> names.size() >= REPEATED)
          .map(names -> new Place(names.get(0), Steps.names(names), names.get(0), List.of()))
          .toList();
    }
  },
  THICK_OR_PREHEATED {
    @Override
    List<Place> places(Steps all, List<String> words) {
      TreeSet<String> joints = new TreeSet<>();
      for (JointPlan plan : all.joints()) {
        for (RunPlan run : plan.runs()) {
          if (Circumstance.THICK_OR_PREHEATED.holds(all.weldment(), all.rows(), plan, run)) {
            joints.add(plan.joint().name());
          }
        }
      }
      return joints.isEmpty()
          ? List.of()
          : List.of(new Place("thick", Steps.names(joints), Steps.names(joints), List.of()));
    }
  },
  SWING {
    @Override
    List<Place> places(Steps all, List<String> words) {
      return all.weldment().swings().stream()
          .map(s -> new Place(s.name(), s.name(), s.name(), s.moving()))
          .toList();
    }
  },
  DRIVEN_SWING {
    @Override
    List<Place> places(Steps all, List<String> words) {
      List<Place> places = new ArrayList<>();
      for (Swing swing : all.weldment().swings()) {
        swing
            .cylinder()
            .filter(c -> onTheWeldment(all.weldment(), c))
            .ifPresent(
                c -> {
                  double mm = c.fixedAt().distance(c.movingAt());
                  String found = String.format(Locale.ROOT, "%.1f mm", mm);
                  places.add(new Place(swing.name(), found, swing.name(), swing.moving()));
                });
      }
      return places;
    }
  };

  /** So many equal joints are worth a trial: common practice, no source. */
  private static final int REPEATED = 4;

  /** A pin this near to a part is on it, mm. */
  private static final double NEAR_A_PART_MM = 80;

  /**
   * Where a step is wanted.
   *
   * @param subject what tells it from others of its sort; empty for one of its own name
   * @param found what was found, for its text
   * @param where what the plan shows as its place
   * @param parts that it touches
   */
  record Place(String subject, String found, String where, List<String> parts) {}

  abstract List<Place> places(Steps all, List<String> words);

  static Occasion of(String words) {
    return valueOf(words.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }

  /** True when the standing pin is on a part too, and not on a floor or a vehicle. */
  private static boolean onTheWeldment(Weldment weldment, Swing.Cylinder cylinder) {
    return weldment.parts().stream()
        .anyMatch(part -> Solid.of(part).distance(cylinder.fixedAt()) < NEAR_A_PART_MM);
  }

  private static boolean clampGiven(Weldment weldment, List<String> piece) {
    return weldment.fixtures().stream()
        .filter(f -> f.kind() == org.counterpull.weldment.Fixture.Kind.RETURN_CLAMP)
        .anyMatch(f -> f.parts().stream().anyMatch(piece::contains));
  }

  private static boolean oily(Feature feature) {
    return switch (feature.kind()) {
      case BEARING, GREASE_FITTING -> true;
      case BORE -> feature.turnsOnMm().isPresent();
      case SEAL,
          THREAD,
          MACHINED_FACE,
          HOLE,
          COATING,
          CAPTIVE_PIECE,
          VESSEL,
          ACCUMULATOR,
          GAS_STRUT ->
          false;
    };
  }

  private static List<Place> features(Steps all, java.util.function.Predicate<Feature> which) {
    return all.weldment().features().stream()
        .filter(which)
        .map(f -> new Place(f.name(), f.name(), f.name(), f.parts()))
        .toList();
  }

  private static String alike(Steps all, JointPlan plan) {
    Part first = all.weldment().part(plan.joint().first());
    Part second = all.weldment().part(plan.joint().second());
    return first.stock().describe()
        + "; "
        + second.stock().describe()
        + "; "
        + plan.contact().form()
        + plan.preparation().kind()
        + plan.runs().size()
        + Steps.mm(plan.size().throat().value());
  }
}
