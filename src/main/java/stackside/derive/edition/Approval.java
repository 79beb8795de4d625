package stackside.derive.edition;

import java.time.LocalDate;
import java.util.List;

/**
 * Who agreed to what a card says.
 *
 * @param day of the last signature
 * @param roles by id, in the order in which the unit lists them
 */
public record Approval(LocalDate day, List<String> roles) {
  public Approval {
    roles = List.copyOf(roles);
  }
}
