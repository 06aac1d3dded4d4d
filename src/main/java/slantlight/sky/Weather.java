package slantlight.sky;

/** Sky conditions of the IES daylight-availability model. */
public enum Weather {
  CLEAR,
  PARTLY_CLOUDY,
  OVERCAST
}
