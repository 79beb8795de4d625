package stackside.energy;

/**
 * What heating without loss needs to know of a tissue.
 *
 * @param conductivity in siemens per metre
 * @param density in kilograms per cubic metre
 * @param heatCapacity in joules per kilogram and kelvin
 */
public record Tissue(double conductivity, double density, double heatCapacity) {

  public Tissue {
    if (!(conductivity > 0 && density > 0 && heatCapacity > 0)) {
      throw new IllegalArgumentException(
          "no tissue: " + conductivity + ", " + density + ", " + heatCapacity);
    }
  }
}
