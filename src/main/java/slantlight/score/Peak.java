package slantlight.score;

import java.time.ZonedDateTime;
import slantlight.geom.Vec3;
import slantlight.light.Source;
import slantlight.sky.Weather;

/**
 * The moment at which something shows most.
 *
 * @param showing multiples of the noticed-unasked threshold
 * @param contrast Michelson contrast of the joint's edge flanks as the eye sees them
 * @param at local clock time
 * @param place where on the joint, world, m
 * @param eyeId the eye that sees it
 * @param eyeDistance m
 * @param source the source that contributes most of the contrast
 * @param sourceShare its share of the slant, 0 to 1
 * @param grazing angle between the source's mean direction and the surface, radians
 * @param shadowLength length of the shadow cast by the crown under a beam, m; NaN without a beam
 * @param illuminance on the surface there, lx
 * @param slant tangential light across the joint / illuminance, 1/rad
 */
public record Peak(
    double showing,
    double contrast,
    ZonedDateTime at,
    Weather weather,
    Vec3 place,
    String eyeId,
    double eyeDistance,
    Source source,
    double sourceShare,
    double grazing,
    double shadowLength,
    double illuminance,
    double slant) {}
