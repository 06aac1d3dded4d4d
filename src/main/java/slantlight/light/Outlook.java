package slantlight.light;

/**
 * An opening as one patch sees it.
 *
 * @param clear true when nothing inside can stand between the two
 */
record Outlook(Aperture aperture, boolean clear) {}
