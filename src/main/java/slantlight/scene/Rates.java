package slantlight.scene;

import java.util.Map;
import java.util.Optional;

/**
 * The user's own prices; nothing here is ours.
 *
 * @param currency the user's word for the money
 * @param perAreaByLevel money per m2 of hanging and finishing, by level 0 to 5
 * @param perBoard money per board, by nothing else than board area, per m2
 * @param perJointLength money per m of joint for extra work such as back-blocking
 * @param highFactor multiplier for ceilings, stairwells and work above {@code highFrom}
 * @param highFrom height above the floor from which work counts as high, m
 * @param perShadeArea money per m2 of opening for a shade or film on it
 * @param perLamp money for moving or re-aiming one lamp
 */
public record Rates(
    String currency,
    Map<Integer, Double> perAreaByLevel,
    Optional<Double> perBoard,
    Optional<Double> perJointLength,
    double highFactor,
    double highFrom,
    Optional<Double> perShadeArea,
    Optional<Double> perLamp) {
  public Rates {
    perAreaByLevel = Map.copyOf(perAreaByLevel);
  }
}
