package slantlight.light;

/** Where light comes from, as told to a person. */
public enum SourceKind {
  SUN,
  SKY,
  GROUND,
  /** Sunlight or skylight mirrored by water, ice or wet paving. */
  WATER,
  /** Light from an outside block (overhang, neighbour, trees). */
  BLOCK,
  LAMP,
  /** Light bounced by the surfaces inside. */
  BOUNCE
}
