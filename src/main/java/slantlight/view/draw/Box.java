package slantlight.view.draw;

/**
 * A rectangle of the screen in layout units (one unit is one pixel on a screen of plain density), y
 * downward. All layout is cutting boxes from boxes.
 */
public record Box(double x, double y, double w, double h) {
  public double right() {
    return x + w;
  }

  public double bottom() {
    return y + h;
  }

  public double midX() {
    return x + w / 2;
  }

  public double midY() {
    return y + h / 2;
  }

  /** The top strip of that height. */
  public Box top(double height) {
    return new Box(x, y, w, Math.min(h, height));
  }

  /** What is left under a top strip. */
  public Box underTop(double height) {
    double cut = Math.min(h, height);
    return new Box(x, y + cut, w, h - cut);
  }

  public Box bottom(double height) {
    double cut = Math.min(h, height);
    return new Box(x, y + h - cut, w, cut);
  }

  public Box aboveBottom(double height) {
    return new Box(x, y, w, Math.max(0, h - height));
  }

  public Box left(double width) {
    return new Box(x, y, Math.min(w, width), h);
  }

  public Box rightOf(double width) {
    double cut = Math.min(w, width);
    return new Box(x + cut, y, w - cut, h);
  }

  /** The right strip of that width. */
  public Box right(double width) {
    double cut = Math.min(w, width);
    return new Box(x + w - cut, y, cut, h);
  }

  public Box leftOf(double width) {
    return new Box(x, y, Math.max(0, w - width), h);
  }

  public Box inset(double by) {
    return inset(by, by);
  }

  public Box inset(double dx, double dy) {
    return new Box(x + dx, y + dy, Math.max(0, w - 2 * dx), Math.max(0, h - 2 * dy));
  }

  public Box moved(double dx, double dy) {
    return new Box(x + dx, y + dy, w, h);
  }

  /** Column {@code i} of {@code n} equal ones. */
  public Box column(int i, int n) {
    return new Box(x + w * i / n, y, w / n, h);
  }

  /** A box of that size in the middle. */
  public Box centred(double width, double height) {
    return new Box(midX() - width / 2, midY() - height / 2, width, height);
  }

  /**
   * The pixels that it covers: left, bottom, width and height from the lower left corner.
   *
   * @param scale pixels per layout unit
   * @param high pixels of the whole picture
   */
  public int[] pixels(double scale, int high) {
    int left = (int) Math.round(x * scale);
    int top = (int) Math.round(y * scale);
    int down = (int) Math.round(bottom() * scale);
    return new int[] {left, high - down, (int) Math.round(right() * scale) - left, down - top};
  }

  public boolean contains(double px, double py) {
    return px >= x && px < right() && py >= y && py < bottom();
  }

  /** True when {@code o} lies inside, with that much slack. */
  public boolean holds(Box o, double slack) {
    return o.x >= x - slack
        && o.y >= y - slack
        && o.right() <= right() + slack
        && o.bottom() <= bottom() + slack;
  }

  /** True when the two share more than {@code slack} both ways. */
  public boolean overlaps(Box o, double slack) {
    return Math.min(right(), o.right()) - Math.max(x, o.x) > slack
        && Math.min(bottom(), o.bottom()) - Math.max(y, o.y) > slack;
  }
}
