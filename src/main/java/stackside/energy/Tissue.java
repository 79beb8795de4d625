package stackside.energy;

/**
 * The tissue properties needed to calculate heating without heat loss.
 *
 * @param conductivity in siemens per metre
 * @param density in kilograms per cubic metre
 * @param heatCapacity in joules per kilogram per kelvin
 */
public record Tissue(double conductivity, double density, double heatCapacity) {

  public Tissue {
    if (!(conductivity > 0 && density > 0 && heatCapacity > 0)) {
      throw new IllegalArgumentException(
          "no tissue: " + conductivity + ", " + density + ", " + heatCapacity);
    }
  }
}
