package slantlight.scene;

/** A stock board, m. */
public record BoardSize(double width, double length) {}
