package slantlight.light;

import slantlight.geom.Frame;

/**
 * A point of a surface at which light is computed.
 *
 * @param frame origin at the point, n out of the surface into the room, u and v in the surface
 * @param roomId the room the point faces
 */
public record SamplePoint(Frame frame, String roomId) {}
