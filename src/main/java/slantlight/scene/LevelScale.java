package slantlight.scene;

/** Which family of finish levels is shown beside the level; a display choice, not a rule. */
public enum LevelScale {
  GA_214,
  EUROPE_Q,
  AS_NZS
}
