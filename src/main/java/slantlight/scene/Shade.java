package slantlight.scene;

/**
 * A shade or film on an opening.
 *
 * @param transmittance share of light let through, 0 to 1
 * @param diffusing true for a cloth that scatters all of it, false for a clear film
 */
public record Shade(double transmittance, boolean diffusing) {}
