package slantlight.scene;

import java.util.Optional;
import java.util.OptionalDouble;
import slantlight.geom.Vec3;

/**
 * Light that is stated outright instead of computed from date and place.
 *
 * @param sunDirection unit vector toward the sun; empty means no sun
 * @param sunNormalLux illuminance of the sun's beam square to it, outside, lx
 * @param skyType CIE general sky type 1 to 15 (5 = uniform), 16 = traditional overcast
 * @param zenithLuminance cd/m2
 * @param groundLuminance luminance of all diffuse ground, cd/m2; empty means reflectance x global
 *     horizontal / pi
 */
public record PrescribedLight(
    Optional<Vec3> sunDirection,
    double sunNormalLux,
    int skyType,
    double zenithLuminance,
    OptionalDouble groundLuminance) {}
