package stackside.derive;

import java.util.List;
import stackside.derive.circuit.Circuits;
import stackside.derive.coverage.Coverage;
import stackside.derive.difference.Differences;
import stackside.derive.drill.DrillOrder;
import stackside.derive.figure.PlacedFigure;
import stackside.derive.guidance.Questions;
import stackside.derive.neutral.ElectrodeLoad;
import stackside.derive.output.Outputs;
import stackside.derive.voltage.VoltageCheck;
import stackside.model.Unit;

/**
 * A unit with everything that follows from its content alone, whatever the day.
 *
 * @param coverage what each room answers
 * @param outputs what the approved settings deliver
 * @param voltages peak voltages compared with ratings
 * @param electrodeLoads what the settings demand of their neutral electrodes
 * @param circuits what happens to the current when one thing goes wrong
 * @param questions what there is to ask about answers and machines
 * @param drillOrders the drills with enough counts
 * @param figures the figures that the texts ask for
 * @param differences every place compared with every other, in both directions; in a large unit,
 *     with the nearest only
 */
public record Analysis(
    Unit unit,
    Coverage coverage,
    Outputs outputs,
    List<VoltageCheck> voltages,
    List<ElectrodeLoad> electrodeLoads,
    Circuits circuits,
    Questions questions,
    List<DrillOrder> drillOrders,
    List<PlacedFigure> figures,
    List<Differences> differences) {

  public Analysis {
    voltages = List.copyOf(voltages);
    electrodeLoads = List.copyOf(electrodeLoads);
    drillOrders = List.copyOf(drillOrders);
    figures = List.copyOf(figures);
    differences = List.copyOf(differences);
  }

  /** Carries out all analyses of a unit. */
  public static Analysis of(Unit unit) {
    Coverage coverage = Coverage.of(unit);
    Circuits circuits = Circuits.of(unit);
    return new Analysis(
        unit,
        coverage,
        Outputs.of(unit),
        VoltageCheck.of(unit),
        ElectrodeLoad.of(unit),
        circuits,
        Questions.of(unit),
        unit.drills().stream().flatMap(drill -> DrillOrder.of(drill).stream()).toList(),
        PlacedFigure.of(unit),
        Differences.of(unit, coverage, circuits));
  }
}
