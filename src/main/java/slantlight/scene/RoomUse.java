package slantlight.scene;

/** What a room is for. GA-214 and ASTM C840 assign the lowest levels by use. */
public enum RoomUse {
  LIVING,
  KITCHEN,
  BEDROOM,
  STUDY,
  HALL,
  STAIR,
  BATH,
  LAUNDRY,
  CLOSET,
  GARAGE,
  STORAGE,
  ATTIC,
  PLENUM
}
