package org.counterpull.order;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.counterpull.contact.Contact;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.weldment.Weldment;

/** Every step that the weldment and its joint plans ask for, before anything is put in order. */
final class Steps {
  private final Weldment weldment;
  private final List<JointPlan> joints;
  private final Map<String, Contact> contacts = new TreeMap<>();
  private final FitOrder fitOrder;
  private final HingeRows rows;
  private final Ways ways;
  private final List<Step> steps = new ArrayList<>();

  private Steps(Weldment weldment, List<JointPlan> joints, List<Contact> contacts) {
    this.weldment = weldment;
    this.joints = joints;
    this.fitOrder = FitOrder.of(weldment);
    this.rows = new HingeRows(weldment);
    this.ways = new Ways(weldment);
    contacts.forEach(contact -> this.contacts.put(contact.joint(), contact));
    joints.forEach(plan -> this.contacts.putIfAbsent(plan.joint().name(), plan.contact()));
  }

  /** In a stable order; identifiers are unique. */
  static List<Step> of(Weldment weldment, List<JointPlan> joints, List<Contact> contacts) {
    return of(weldment, joints, contacts, List.of());
  }

  /** The same with steps that planning asks for. */
  static List<Step> of(
      Weldment weldment, List<JointPlan> joints, List<Contact> contacts, List<AskedStep> asked) {
    Steps all = new Steps(weldment, joints, contacts);
    PartSteps.add(all);
    CouponSteps.add(all);
    JointSteps.add(all);
    FeatureSteps.add(all);
    PinSteps.add(all);
    AddedStep.add(all);
    AskedStep.add(all, asked);
    FixtureSteps.add(all);
    ClosingSteps.add(all);
    return List.copyOf(all.steps);
  }

  Weldment weldment() {
    return weldment;
  }

  List<JointPlan> joints() {
    return joints;
  }

  Contact contact(String joint) {
    return contacts.get(joint);
  }

  FitOrder fitOrder() {
    return fitOrder;
  }

  Ways ways() {
    return ways;
  }

  HingeRows rows() {
    return rows;
  }

  void add(Draft draft) {
    steps.add(draft.step(Places.bench(weldment)));
  }

  void addWeld(Step step, RunPlan run) {
    steps.add(JointSteps.withRun(step, run));
  }

  static String mm(double lengthMm) {
    double rounded = Math.round(lengthMm * 10) / 10.0;
    return rounded == Math.rint(rounded)
        ? String.format(Locale.ROOT, "%.0f", rounded)
        : String.format(Locale.ROOT, "%.1f", rounded);
  }

  static String names(Collection<String> names) {
    return String.join(", ", names);
  }

  /** A step that is being written down. */
  static final class Draft {
    private final StepTag tag;
    private final String id;
    private final String what;
    private final String where;
    private Set<String> parts = Set.of();
    private Optional<String> joint = Optional.empty();
    private Optional<String> subject = Optional.empty();
    private Set<String> links = Set.of();
    private List<String> why = List.of();
    private List<String> cautions = List.of();
    private int turn;
    private double activeS;
    private String cause = "";

    Draft(StepTag tag, String subject, String what, String where) {
      this.tag = tag;
      this.id = tag.words().replace(' ', '-') + (subject.isEmpty() ? "" : ":" + subject);
      this.what = what;
      this.where = where;
      this.activeS = BenchTimes.seconds(tag);
    }

    Draft parts(Collection<String> names) {
      parts = Set.copyOf(names);
      return this;
    }

    Draft joint(String name) {
      joint = Optional.of(name);
      return this;
    }

    Draft subject(String name) {
      subject = Optional.of(name);
      return this;
    }

    Draft links(Collection<String> names) {
      links = Set.copyOf(names);
      return this;
    }

    Draft why(List<String> sentences) {
      why = sentences;
      return this;
    }

    Draft why(String sentence) {
      return why(List.of(sentence));
    }

    Draft cautions(List<String> sentences) {
      cautions = sentences;
      return this;
    }

    Draft turn(int place) {
      turn = place;
      return this;
    }

    Draft cause(String rule) {
      cause = rule;
      return this;
    }

    /** Active time as that many times the time of one. */
    Draft times(int count) {
      activeS *= count;
      return this;
    }

    Step step(String place) {
      Operation operation =
          new Operation(
              id, tag.kind(), what, where, place, why, cautions, activeS, Optional.empty());
      return new Step(tag, operation, parts, joint, subject, links, turn, Optional.empty(), cause);
    }
  }
}
