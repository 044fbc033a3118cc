package org.counterpull.registry;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.counterpull.preheat.MethodBPreheat;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.steel.CarbonEquivalent;
import org.counterpull.steel.Composition;
import org.counterpull.steel.Element;
import org.counterpull.steel.HazHardness;

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
        preheat(),
        hardness());
  }

  private static PublishedFormula equivalent(
      Formula formula, Function<Composition, Computed> function) {
    return PublishedFormula.of(
        formula,
        elements(EQUIVALENT_ELEMENTS),
        a -> function.apply(composition(EQUIVALENT_ELEMENTS, a)));
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
