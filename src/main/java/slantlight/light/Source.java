package slantlight.light;

/**
 * One named source as seen from a sample.
 *
 * @param kind what it is
 * @param via id of the opening it comes through or of the lamp; empty for bounced light
 * @param label for a person: "ground light through the south slider", "lamp sconce F2"
 */
public record Source(SourceKind kind, String via, String label) {}
