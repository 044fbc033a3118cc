package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.pull.Assembly;
import org.counterpull.pull.BeamBody;
import org.counterpull.pull.Coordinate;
import org.counterpull.pull.ElasticMaterial;
import org.counterpull.pull.FreeResponse;
import org.counterpull.pull.Load;
import org.counterpull.pull.MaterialPoint;
import org.counterpull.pull.Pull;
import org.counterpull.pull.RigidBody;
import org.counterpull.pull.Run;
import org.counterpull.pull.RunSequence;
import org.counterpull.pull.SectionShapes;
import org.counterpull.pull.Segment;
import org.counterpull.pull.SpringStiffness;
import org.counterpull.pull.Structure;
import org.counterpull.pull.WeldStiffness;
import org.counterpull.space.Frame;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/** A weldment as fitted and tacked, ready to be welded in any order. */
final class PullModel {
  private final Weldment weldment;
  private final List<PulledRun> runs;
  private final List<Amounts> amounts = new ArrayList<>();
  private final List<List<Piece>> pieces = new ArrayList<>();
  private final Groups groups;
  private final Grooves grooves;
  private final Map<String, List<Vector3D>> needed = new LinkedHashMap<>();
  private final Map<String, Body> bodies = new LinkedHashMap<>();
  private final Map<String, Integer> numbers = new LinkedHashMap<>();
  private final Assembly assembly = new Assembly();
  private final List<List<Laid>> laid = new ArrayList<>();
  private final List<Measure> measures = new ArrayList<>();
  private final Map<Integer, SpringStiffness> tacks = new LinkedHashMap<>();
  private final List<Integer> holds = new ArrayList<>();
  private final Map<Integer, SpringStiffness> holdStiffness = new LinkedHashMap<>();
  private final List<List<Integer>> shapes = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private int checkReadings;
  private Optional<Structure> fitted = Optional.empty();
  private Optional<List<Integer>> released = Optional.empty();

  PullModel(Weldment weldment, List<PulledRun> runs) {
    this.weldment = weldment;
    this.runs = runs;
    this.groups = new Groups(weldment, runs);
    Wants forms = new Wants(weldment, runs);
    for (PulledRun run : runs) {
      amounts.add(forms.of(run));
    }
    this.grooves = new Grooves(runs, amounts);
    pieces.addAll(Piece.of(runs));
    collectPoints();
    makeBodies();
    for (int r = 0; r < runs.size(); r++) {
      layPieces(r);
    }
    for (int r = 0; r < runs.size(); r++) {
      tack(r);
    }
    makeReadings();
    holdByFixtures();
  }

  private void need(String part, Vector3D point) {
    needed.computeIfAbsent(part, n -> new ArrayList<>()).add(point);
  }

  private void collectPoints() {
    for (int r = 0; r < runs.size(); r++) {
      for (Piece piece : pieces.get(r)) {
        for (int i = 0; i < piece.walls().size(); i++) {
          Wall wall = piece.walls().get(i);
          Vector3D into = piece.intoWall(i, amounts.get(r).walls().get(i));
          need(wall.part(), piece.middle());
          need(wall.part(), piece.from().add(into));
          need(wall.part(), piece.to().add(into));
        }
      }
    }
    for (Check check : weldment.checks()) {
      Measures.needed(weldment, check)
          .forEach((part, points) -> points.forEach(p -> need(part, p)));
    }
    for (Fixture fixture : weldment.fixtures()) {
      Holding.of(weldment, fixture).forEach(holding -> need(holding.part(), holding.at()));
    }
  }

  private void makeBodies() {
    for (Part part : weldment.parts()) {
      boolean carries =
          runs.stream()
              .flatMap(run -> run.walls().stream())
              .anyMatch(wall -> wall.part().equals(part.name()) && wall.goesOn());
      Body body = Bodies.of(part, needed.getOrDefault(part.name(), List.of()), carries);
      bodies.put(part.name(), body);
      numbers.put(part.name(), assembly.body(body.elastic()));
    }
  }

  private MaterialPoint at(String part, Vector3D point) {
    return new MaterialPoint(numbers.get(part), bodies.get(part).nodeAt(point), point);
  }

  private void layPieces(int r) {
    PulledRun run = runs.get(r);
    List<Laid> ofRun = new ArrayList<>();
    for (Piece piece : pieces.get(r)) {
      ofRun.add(lay(run, amounts.get(r), piece));
    }
    laid.add(ofRun);
  }

  /**
   * A line's tacks lie where its pieces will. A groove that is welded by several runs is tacked
   * once, and whichever run comes first remelts the tacks.
   */
  private void tack(int r) {
    List<Integer> beside = grooves.beside(r);
    if (beside.stream().anyMatch(other -> other < r)) {
      return;
    }
    Map<Integer, SpringStiffness> ofPieces = Tacks.of(runs.get(r), pieces.get(r));
    for (Map.Entry<Integer, SpringStiffness> tack : ofPieces.entrySet()) {
      int k = tack.getKey();
      if (beside.isEmpty()) {
        tacks.put(laid.get(r).get(k).link(), tack.getValue());
        continue;
      }
      Piece piece = pieces.get(r).get(k);
      int link = linkAt(runs.get(r), piece);
      tacks.put(link, tack.getValue());
      remelt(r, k, link);
      beside.forEach(other -> remelt(other, Tacks.nearest(pieces.get(other), piece), link));
    }
  }

  private void remelt(int r, int k, int tack) {
    Laid piece = laid.get(r).get(k);
    List<Integer> all = new ArrayList<>(piece.whole().remelts());
    all.add(tack);
    laid.get(r).set(k, piece.remelting(all));
  }

  private int linkAt(PulledRun run, Piece piece) {
    return assembly.link(
        at(run.walls().get(0).part(), piece.middle()),
        at(run.walls().get(1).part(), piece.middle()),
        axes(run, piece));
  }

  private static Frame axes(PulledRun run, Piece piece) {
    return Frame.of(piece.middle(), piece.along(), piece.along().crossProduct(piece.across(run)));
  }

  private Laid lay(PulledRun run, Amounts wants, Piece piece) {
    Frame axes = axes(run, piece);
    ElasticMaterial material = ElasticMaterial.STEEL;
    double thickness = run.thinnestMm();
    SpringStiffness cold =
        WeldStiffness.cold(
            piece.lengthMm(),
            run.kind() == PulledRun.Kind.BUTT ? thickness : run.throatMm(),
            WeldStiffness.GAUGE_MM,
            material);
    SpringStiffness pulling = softer(WeldStiffness.pulling(piece.lengthMm(), thickness), cold);
    int link = link(run, piece, axes, cold);
    Map<Effect, double[]> wanted = wanted(run, wants, piece, axes);
    Map<Effect, List<Integer>> loads = new EnumMap<>(Effect.class);
    Load all = new Load(List.of(), List.of());
    for (Effect effect : List.of(Effect.ACROSS, Effect.ANGLE, Effect.ALONG)) {
      Load load = load(effect, wants, piece);
      boolean any = !load.forces().isEmpty() || !load.strains().isEmpty();
      if (any) {
        loads.put(effect, List.of(assembly.load(load)));
        all = all.plus(load);
      }
    }
    double[] together = new double[6];
    for (double[] one : wanted.values()) {
      for (int c = 0; c < 6; c++) {
        together[c] += one[c];
      }
    }
    boolean any = !all.forces().isEmpty() || !all.strains().isEmpty();
    Segment whole =
        new Segment(
            link,
            pulling,
            cold,
            together,
            any ? List.of(assembly.load(all)) : List.of(),
            List.of());
    return new Laid(link, pulling, cold, wanted, loads, whole);
  }

  /** A bead joins nothing: its link carries a grain that has no say. */
  private int link(PulledRun run, Piece piece, Frame axes, SpringStiffness cold) {
    if (run.walls().size() == 2) {
      return linkAt(run, piece);
    }
    MaterialPoint first = at(run.walls().get(0).part(), piece.middle());
    int grain = assembly.body(new RigidBody(piece.middle()));
    int link = assembly.link(first, new MaterialPoint(grain, 0, piece.middle()), axes);
    tacks.put(link, cold);
    return link;
  }

  private static SpringStiffness softer(SpringStiffness one, SpringStiffness than) {
    return new SpringStiffness(
        Math.min(one.along(), than.along()),
        Math.min(one.across(), than.across()),
        Math.min(one.normal(), than.normal()),
        Math.min(one.aboutAlong(), than.aboutAlong()),
        Math.min(one.aboutAcross(), than.aboutAcross()),
        Math.min(one.aboutNormal(), than.aboutNormal()));
  }

  private static Map<Effect, double[]> wanted(
      PulledRun run, Amounts wants, Piece piece, Frame axes) {
    Map<Effect, double[]> wanted = new EnumMap<>(Effect.class);
    boolean joined = run.kind() == PulledRun.Kind.BUTT || run.kind() == PulledRun.Kind.CORNER;
    Vector3D shift = axes.directionInto(piece.wantedShift(run, wants));
    Vector3D turn = axes.directionInto(piece.wantedTurn(run, wants));
    if (shift.getNorm() > 0) {
      wanted.put(
          joined ? Effect.ACROSS : Effect.LEAN,
          new double[] {shift.getX(), shift.getY(), shift.getZ(), 0, 0, 0});
    }
    if (turn.getNorm() > 0) {
      wanted.put(Effect.ANGLE, new double[] {0, 0, 0, turn.getX(), turn.getY(), turn.getZ()});
    }
    return wanted;
  }

  private Load load(Effect effect, Amounts wants, Piece piece) {
    Load load = new Load(List.of(), List.of());
    for (int i = 0; i < piece.walls().size(); i++) {
      Wall wall = piece.walls().get(i);
      Amounts.OfWall amount = wants.walls().get(i);
      if (effect == Effect.ALONG) {
        Vector3D into = piece.intoWall(i, amount);
        MaterialPoint from = at(wall.part(), piece.from().add(into));
        MaterialPoint to = at(wall.part(), piece.to().add(into));
        if (from.node() != to.node() && amount.alongN() > 0) {
          load = load.plus(Load.tendon(assembly, from, to, amount.alongN()));
        }
      } else if (wall.goesOn()) {
        double across = effect == Effect.ACROSS ? amount.acrossMm() : 0;
        double angle = effect == Effect.ANGLE ? amount.angleRad() : 0;
        load = load.plus(shrunk(piece, wall, across, angle));
      }
    }
    return load;
  }

  private Load shrunk(Piece piece, Wall wall, double across, double angle) {
    if (across == 0 && angle == 0) {
      return new Load(List.of(), List.of());
    }
    Optional<FreeResponse> response =
        bodies
            .get(wall.part())
            .shrunk(
                new ShrunkStrip(
                    piece.root(),
                    piece.along(),
                    piece.lengthMm(),
                    wall.thicknessMm(),
                    wall.along(),
                    wall.outward(),
                    across,
                    angle));
    return response
        .map(r -> Load.strain(numbers.get(wall.part()), r))
        .orElse(new Load(List.of(), List.of()));
  }

  private void makeReadings() {
    Measures make =
        new Measures(
            weldment,
            assembly,
            new Measures.PartPoints() {
              @Override
              public MaterialPoint at(String part, Vector3D point) {
                return PullModel.this.at(part, point);
              }

              @Override
              public int groupOf(String part) {
                return groups.of(part);
              }
            });
    for (Check check : weldment.checks()) {
      Measure measure = make.of(check);
      measures.add(measure);
      measure.points().forEach(point -> point.readings().forEach(assembly::reading));
      checkReadings += measure.readings();
    }
    for (Part part : weldment.parts()) {
      for (Vector3D station : bodies.get(part.name()).stations()) {
        shapes.add(shape(at(part.name(), station)));
      }
    }
  }

  /** Displacement and turn of a station: six readings. */
  private List<Integer> shape(MaterialPoint point) {
    List<Integer> six = new ArrayList<>();
    for (Vector3D axis : List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K)) {
      six.add(assembly.reading(assembly.displacement(point, axis)));
    }
    for (Vector3D axis : List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K)) {
      six.add(assembly.reading(Coordinate.turn(point, axis)));
    }
    return six;
  }

  private void holdByFixtures() {
    Map<Fixture, List<Holding>> all = new LinkedHashMap<>();
    for (Fixture fixture : weldment.fixtures()) {
      List<Holding> holdings = Holding.of(weldment, fixture);
      if (holdings.size() > 1) {
        all.put(fixture, holdings);
      } else {
        notes.add(
            fixture.name()
                + " ("
                + fixture.kind().words()
                + ") doesn't hold anything sideways here: what only lies is free to move.");
      }
    }
    all.forEach(
        (fixture, holdings) -> {
          if (fixture.kind() == Fixture.Kind.THROUGH_ROD) {
            rod(fixture, holdings);
          } else {
            frame(holdings);
          }
        });
  }

  /** A rod is a bar of its own, fast in the first bore and free to slide and turn in the others. */
  private void rod(Fixture fixture, List<Holding> holdings) {
    Vector3D way = holdings.get(0).axes().x();
    Vector3D from = holdings.get(0).at();
    List<Holding> sorted = new ArrayList<>(holdings);
    sorted.sort(java.util.Comparator.comparingDouble(h -> h.at().subtract(from).dotProduct(way)));
    Vector3D up = holdings.get(0).axes().z();
    List<Vector3D> nodes = new ArrayList<>();
    for (Holding holding : sorted) {
      nodes.add(holding.at());
    }
    int body =
        assembly.body(
            BeamBody.straight(
                nodes,
                SectionShapes.round(fixture.diameterMm().orElseThrow()),
                up,
                ElasticMaterial.STEEL));
    for (int i = 0; i < sorted.size(); i++) {
      Holding holding = sorted.get(i);
      MaterialPoint onRod = new MaterialPoint(body, i, holding.at());
      int link = assembly.link(onRod, at(holding.part(), holding.at()), holding.axes());
      holdStiffness.put(link, i == 0 ? holding.fast() : holding.stiffness());
      if (i > 0) {
        holds.add(link);
      }
    }
  }

  /**
   * Clamps, strongbacks and spacers hold their parts to one rigid frame: a bench, a beam, a bar. It
   * stays on the first part, where alone it carries nothing, and comes off the others.
   */
  private void frame(List<Holding> holdings) {
    Vector3D middle = Vector3D.ZERO;
    for (Holding holding : holdings) {
      middle = middle.add(1.0 / holdings.size(), holding.at());
    }
    int body = assembly.body(new RigidBody(middle));
    for (int i = 0; i < holdings.size(); i++) {
      Holding holding = holdings.get(i);
      int link =
          assembly.link(
              new MaterialPoint(body, 0, holding.at()),
              at(holding.part(), holding.at()),
              holding.axes());
      holdStiffness.put(link, i == 0 ? holding.fast() : holding.stiffness());
      if (i > 0) {
        holds.add(link);
      }
    }
  }

  /** As fitted: tacked and held, with nothing moved. */
  private Structure fitted() {
    if (fitted.isEmpty()) {
      Structure structure = new Structure(assembly, 1);
      tacks.forEach(structure::join);
      holdStiffness.forEach(structure::join);
      fitted = Optional.of(structure);
    }
    return fitted.get();
  }

  /**
   * As fitted, for one order that is worked out in full.
   *
   * @param accounts how many
   * @param withShape whether the stations of the parts are read too
   */
  Structure forOneOrder(int accounts, boolean withShape) {
    return fitted()
        .forgetting(List.of(), wholes(), withShape ? List.of() : stations())
        .withAccounts(accounts);
  }

  private List<Integer> wholes() {
    return laid.stream()
        .flatMap(List::stream)
        .flatMap(piece -> piece.whole().loads().stream())
        .toList();
  }

  private List<Integer> stations() {
    return shapes.stream().flatMap(List::stream).toList();
  }

  /**
   * Links of fixtures that come off, in order: those that still strain something. One that only
   * carries its own frame or another group of parts carries no force.
   */
  List<Integer> releasedAtEnd() {
    if (released.isEmpty()) {
      released = Optional.of(findReleased());
    }
    return released.get();
  }

  private List<Integer> findReleased() {
    List<Integer> loads = new ArrayList<>(wholes());
    laid.stream()
        .flatMap(List::stream)
        .flatMap(piece -> piece.loads().values().stream())
        .forEach(loads::addAll);
    List<Integer> readings = new ArrayList<>(stations());
    for (int reading = 0; reading < checkReadings; reading++) {
      readings.add(reading);
    }
    List<Integer> links =
        new ArrayList<>(laid.stream().flatMap(List::stream).map(Laid::link).toList());
    List<Integer> comeOff = new ArrayList<>();
    // What holds parts when all is welded holds them when all is tacked: links that are tacked
    // stay.
    Structure trial = fitted().forgetting(links, loads, readings);
    for (int link : holds) {
      if (!trial.holdsAlone(link)) {
        trial.release(link);
        comeOff.add(link);
      }
    }
    return comeOff;
  }

  RunSequence sequence() {
    List<Run> all = new ArrayList<>();
    for (int r = 0; r < runs.size(); r++) {
      List<Segment> segments = laid.get(r).stream().map(Laid::whole).toList();
      all.add(Run.whole(runs.get(r).name(), segments).beside(beside(r, List.of(Effect.values()))));
    }
    return new RunSequence(fitted(), all, releasedAtEnd(), checkReadings);
  }

  /** What welded runs in the groove of a run take part with when it pulls by some effects. */
  List<List<Pull>> beside(int r, List<Effect> effects) {
    List<List<Pull>> all = new ArrayList<>();
    for (int other : grooves.beside(r)) {
      List<Pull> ofOther = new ArrayList<>();
      for (int k = 0; k < pieces.get(other).size(); k++) {
        Piece there = pieces.get(other).get(k);
        Piece here = pieces.get(r).get(Tacks.nearest(pieces.get(r), there));
        double[] wanted = grooves.wantedAt(there, axes(runs.get(other), there), r, here, effects);
        Laid piece = laid.get(other).get(k);
        ofOther.add(new Pull(piece.link(), piece.pulling(), wanted));
      }
      all.add(ofOther);
    }
    return all;
  }

  /** Which runs share a groove. */
  Grooves grooves() {
    return grooves;
  }

  List<PulledRun> runs() {
    return runs;
  }

  List<List<Piece>> pieces() {
    return pieces;
  }

  List<Amounts> amounts() {
    return amounts;
  }

  List<List<Laid>> laid() {
    return laid;
  }

  List<Measure> measures() {
    return measures;
  }

  int checkReadings() {
    return checkReadings;
  }

  Map<String, Body> bodies() {
    return bodies;
  }

  Groups groups() {
    return groups;
  }

  List<List<Integer>> shapes() {
    return shapes;
  }

  List<String> notes() {
    return notes;
  }
}
