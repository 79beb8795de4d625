package stackside.derive;

import java.util.List;
import stackside.derive.circuit.Circuits;
import stackside.derive.coverage.Coverage;
import stackside.derive.neutral.ElectrodeLoad;
import stackside.derive.output.Outputs;
import stackside.derive.voltage.VoltageCheck;
import stackside.model.Unit;

/**
 * A unit with everything that follows from its content alone, whatever the day.
 *
 * @param coverage what each room answers
 * @param outputs what the approved settings deliver
 * @param voltages peak voltages against ratings
 * @param electrodeLoads what the settings ask of their neutral electrodes
 * @param circuits what becomes of the current when one thing goes wrong
 */
public record Analysis(
    Unit unit,
    Coverage coverage,
    Outputs outputs,
    List<VoltageCheck> voltages,
    List<ElectrodeLoad> electrodeLoads,
    Circuits circuits) {

  public Analysis {
    voltages = List.copyOf(voltages);
    electrodeLoads = List.copyOf(electrodeLoads);
  }

  /** Works out all analyses of a unit. */
  public static Analysis of(Unit unit) {
    return new Analysis(
        unit,
        Coverage.of(unit),
        Outputs.of(unit),
        VoltageCheck.of(unit),
        ElectrodeLoad.of(unit),
        Circuits.of(unit));
  }
}
