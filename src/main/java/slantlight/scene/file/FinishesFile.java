package slantlight.scene.file;

/** Finishes by part of the room, as written. */
public record FinishesFile(
    @Key("Every wall.") FinishFile walls,
    @Key("Every ceiling.") FinishFile ceiling,
    @Key("Every floor.") FinishFile floor,
    @Key("Free polygons and boxes.") FinishFile other) {

  /** Nothing stated. */
  public static final FinishesFile NONE = new FinishesFile(null, null, null, null);
}
