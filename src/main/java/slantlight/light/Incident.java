package slantlight.light;

import slantlight.geom.Vec3;

/**
 * A small cone of light arriving at a sample.
 *
 * @param direction unit vector from the sample toward where the light comes from, world
 * @param normalLux luminance x solid angle: illuminance on a plane square to the direction, lx
 */
public record Incident(Vec3 direction, double normalLux, Source source) {}
