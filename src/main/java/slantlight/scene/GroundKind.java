package slantlight.scene;

/** What lies on the ground outside. */
public enum GroundKind {
  /** Diffuse ground with the site's monthly reflectance. */
  GROUND,
  /** Diffuse, always snow. */
  SNOW,
  /** Diffuse, with its own reflectance; a mirror as well when wet. */
  PAVING,
  /** Mirror by Fresnel, roughened by wind. */
  WATER,
  /** Mirror by Fresnel over a diffuse body. */
  ICE
}
