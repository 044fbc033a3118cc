package org.counterpull.jointplan;

import java.util.List;
import java.util.Optional;
import org.counterpull.contact.Contact;
import org.counterpull.machine.MachineVerdict;
import org.counterpull.quantity.Computed;
import org.counterpull.weldment.Joint;

/**
 * Everything that is decided at one joint before runs are put in order.
 *
 * @param joint what the file asks for
 * @param contact how the parts meet
 * @param preparation what is done to the edges
 * @param size weld size
 * @param filler filler and gas of the chosen machine
 * @param verdicts one for each machine of the shop, file order
 * @param machine name of the chosen machine; empty when none can weld it
 * @param carbonEquivalents CE, CET, Pcm of the governing steel; empty when its composition is
 *     unknown
 * @param hardness expected highest hardness beside the weld, HV10; empty when unknown
 * @param preheat least temperature before welding, deg C, with what holds outside the box of its
 *     method
 * @param steel what the steels of both parts ask for
 * @param coupon test piece to weld first; empty where none is asked for
 * @param loadCheck what the load does to the welds; empty where the file gives none, or where a
 *     part's strength is not known here
 * @param notes what else must be known, in sentences
 * @param refusals what is asked for and can't be done here, in sentences
 * @param runs the runs, in the order of the contact's lines
 */
public record JointPlan(
    Joint joint,
    Contact contact,
    EdgePreparation preparation,
    WeldSize size,
    Optional<Filler> filler,
    List<MachineVerdict> verdicts,
    Optional<String> machine,
    List<Computed> carbonEquivalents,
    Optional<Computed> hardness,
    Computed preheat,
    SteelAdvice steel,
    Optional<Coupon> coupon,
    Optional<LoadCheck> loadCheck,
    List<String> notes,
    List<String> refusals,
    List<RunPlan> runs) {

  public JointPlan {
    verdicts = List.copyOf(verdicts);
    carbonEquivalents = List.copyOf(carbonEquivalents);
    notes = List.copyOf(notes);
    refusals = List.copyOf(refusals);
    runs = List.copyOf(runs);
  }

  /** The same with another test piece. */
  JointPlan withCoupon(Optional<Coupon> other) {
    return new JointPlan(
        joint,
        contact,
        preparation,
        size,
        filler,
        verdicts,
        machine,
        carbonEquivalents,
        hardness,
        preheat,
        steel,
        other,
        loadCheck,
        notes,
        refusals,
        runs);
  }
}
