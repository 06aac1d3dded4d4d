package slantlight.scene;

/** Altitude of the far skyline at an azimuth, radians (azimuth clockwise from true north). */
public record SkylinePoint(double azimuth, double altitude) {}
