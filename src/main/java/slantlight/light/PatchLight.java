package slantlight.light;

import slantlight.geom.Vec2;

/**
 * Light on one patch of an inside surface.
 *
 * @param at a point of it, in its surface's plane coordinates, m
 * @param area m2
 * @param illuminance mean over the patch, lx
 */
public record PatchLight(String surfaceId, Vec2 at, double area, double illuminance) {}
