package org.counterpull.registry;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.counterpull.preheat.AwsPreheatTable;
import org.counterpull.preheat.HydrogenControlPreheat;
import org.counterpull.preheat.MethodBPreheat;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.steel.CarbonEquivalent;
import org.counterpull.steel.Composition;
import org.counterpull.steel.Element;
import org.counterpull.steel.HazHardness;
import org.counterpull.steel.MartensiteStart;

/** Published formulas of the packages {@code steel} and {@code preheat}. */
final class SteelFormulas {
  private static final List<Element> EQUIVALENT_ELEMENTS =
      List.of(
          Element.C,
          Element.SI,
          Element.MN,
          Element.CR,
          Element.MO,
          Element.V,
          Element.NI,
          Element.CU,
          Element.B);

  private SteelFormulas() {}

  static List<PublishedFormula> all() {
    return List.of(
        equivalent(CarbonEquivalent.CE_IIW, CarbonEquivalent::ceIIW),
        equivalent(CarbonEquivalent.CET, CarbonEquivalent::cet),
        equivalent(CarbonEquivalent.PCM, CarbonEquivalent::pcm),
        everyElement(CarbonEquivalent.CEN, CarbonEquivalent::cen),
        equivalent(CarbonEquivalent.CE_AWS, CarbonEquivalent::ceAws),
        everyElement(MartensiteStart.FORMULA, MartensiteStart::of),
        preheat(),
        awsTable(),
        hydrogenControl(),
        hardness(),
        hardnessBy());
  }

  private static PublishedFormula equivalent(
      Formula formula, Function<Composition, Computed> function) {
    return PublishedFormula.of(
        formula,
        elements(EQUIVALENT_ELEMENTS),
        a -> function.apply(composition(EQUIVALENT_ELEMENTS, a)));
  }

  private static PublishedFormula everyElement(
      Formula formula, Function<Composition, Computed> function) {
    List<Element> every = List.of(Element.values());
    return PublishedFormula.of(
        formula, elements(every), a -> function.apply(composition(every, a)));
  }

  private static PublishedFormula awsTable() {
    return PublishedFormula.of(
        AwsPreheatTable.FORMULA,
        List.of(
            Argument.choice(
                "category",
                "a without, b with low-hydrogen processes, c higher strength, d H8",
                List.of("a", "b", "c", "d")),
            Argument.quantity("thickness", "mm", "the thickest part at the weld")),
        a ->
            AwsPreheatTable.of(
                AwsPreheatTable.Category.valueOf(a.text("category").toUpperCase(Locale.ROOT)),
                a.value("thickness")));
  }

  private static PublishedFormula hydrogenControl() {
    return PublishedFormula.of(
        HydrogenControlPreheat.FORMULA,
        List.of(
            Argument.quantity("pcm", "%", "crack sensitivity Pcm of the parent metal"),
            Argument.choice("hydrogen", "level of hydrogen", List.of("h1", "h2", "h3")),
            Argument.choice("restraint", "a judgement", List.of("low", "medium", "high")),
            Argument.quantity("thickness", "mm", "the thicker part")),
        a ->
            HydrogenControlPreheat.of(
                a.value("pcm"),
                HydrogenControlPreheat.Hydrogen.valueOf(
                    a.text("hydrogen").toUpperCase(Locale.ROOT)),
                HydrogenControlPreheat.Restraint.valueOf(
                    a.text("restraint").toUpperCase(Locale.ROOT)),
                a.value("thickness")));
  }

  /** One method at a time: what the median is taken of. */
  private static PublishedFormula hardnessBy() {
    List<Element> every = List.of(Element.values());
    List<Argument> arguments = new ArrayList<>(elements(every));
    arguments.add(Argument.quantity("t85", "s", "cooling time from 800 to 500 C"));
    arguments.add(Argument.choice("method", "whose", List.of("duren", "yurioka", "suzuki-bl70s")));
    return PublishedFormula.of(
        HazHardness.BY_ONE,
        arguments,
        a ->
            HazHardness.BY_ONE.result(
                HazHardness.estimates(composition(every, a), a.value("t85"))
                    .byMethod()
                    .get(a.text("method"))));
  }

  private static PublishedFormula preheat() {
    return PublishedFormula.of(
        MethodBPreheat.FORMULA,
        List.of(
            Argument.quantity("cet", "%", "carbon equivalent CET of the parent metal"),
            Argument.quantity("thickness", "mm", "the thicker plate"),
            Argument.quantity("hydrogen", "ml/100 g", "diffusible hydrogen of the deposit"),
            Argument.quantity("heat-input", "kJ/mm", "heat input with the factor k")),
        a ->
            MethodBPreheat.of(
                a.value("cet"), a.value("thickness"), a.value("hydrogen"), a.value("heat-input")));
  }

  private static PublishedFormula hardness() {
    List<Element> every = List.of(Element.values());
    List<Argument> arguments = new ArrayList<>(elements(every));
    arguments.add(Argument.quantity("t85", "s", "cooling time from 800 to 500 C"));
    return new PublishedFormula(
        HazHardness.FORMULA,
        arguments,
        a -> {
          Composition steel = composition(every, a);
          HazHardness.Estimates hv = HazHardness.estimates(steel, a.value("t85"));
          return new Answer(
              HazHardness.of(steel, a.value("t85")),
              OptionalDouble.of(hv.spreadHV()),
              hv.byMethod());
        });
  }

  private static List<Argument> elements(List<Element> elements) {
    return elements.stream()
        .map(e -> Argument.quantity(e.symbol(), "%", e.symbol() + " by mass").orElse("0"))
        .toList();
  }

  private static Composition composition(List<Element> elements, Arguments arguments) {
    Map<Element, Double> percent = new EnumMap<>(Element.class);
    for (Element element : elements) {
      percent.put(element, arguments.value(element.symbol()));
    }
    return new Composition(percent);
  }
}
