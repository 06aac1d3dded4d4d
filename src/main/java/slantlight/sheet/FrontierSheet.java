package slantlight.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slantlight.geom.Vec2;

/** What each further sum of money buys: price across, weighted showing that is left upward. */
public final class FrontierSheet {
  private static final double PAGE = 184;
  private static final double LEFT = 24;
  private static final double TOP = 10;
  private static final double WIDTH = 150;
  private static final double HEIGHT = 62;

  private final List<Step> steps;
  private final String money;
  private final Pencil pencil = new Pencil(PAGE, TOP + HEIGHT + 13);

  /**
   * One plan worth having.
   *
   * @param price over the house as it is
   * @param excess weighted showing above the limits that is left
   * @param words what is done
   * @param marked true for the plan that is proposed
   */
  public record Step(double price, double excess, String words, boolean marked) {}

  private FrontierSheet(List<Step> steps, String money) {
    this.steps = List.copyOf(steps);
    this.money = money;
  }

  /**
   * Draws a frontier.
   *
   * @param steps cheapest first, at least one
   * @param money what prices are counted in
   * @param id safe id of the drawing
   */
  public static Drawing of(List<Step> steps, String money, String id) {
    return new FrontierSheet(steps, money).draw(id);
  }

  private Drawing draw(String id) {
    double low = Math.min(0, steps.get(0).price());
    double high = Math.max(low + 1, steps.get(steps.size() - 1).price());
    double most = Math.max(1e-9, steps.stream().mapToDouble(Step::excess).max().orElseThrow());
    double priceStep = round((high - low) / 5);
    double excessStep = round(most / 4);
    double x1 = Math.ceil(high / priceStep) * priceStep;
    double x0 = Math.floor(low / priceStep) * priceStep;
    double y1 = Math.ceil(most / excessStep) * excessStep;
    pencil.on("grid");
    Pen thin = Pen.full(Ink.FAINT, 0.18);
    for (double p = x0; p <= x1 + priceStep / 2; p += priceStep) {
      double x = x(p, x0, x1);
      pencil.line(x, TOP, x, TOP + HEIGHT, thin);
      pencil.centred(x, TOP + HEIGHT + 4, number(p, priceStep), 2.8, Ink.SOFT);
    }
    for (double e = 0; e <= y1 + excessStep / 2; e += excessStep) {
      double y = y(e, y1);
      pencil.line(LEFT, y, LEFT + WIDTH, y, thin);
      pencil.label(
          LEFT - 2, y + 1, number(e, excessStep), 2.8, Mark.Anchor.END, 0, Ink.SOFT, false);
    }
    pencil.centred(
        LEFT + WIDTH / 2,
        TOP + HEIGHT + 9,
        "price over the house as it is, " + money,
        2.9,
        Ink.LINE);
    pencil.label(
        LEFT - 16,
        TOP + HEIGHT / 2,
        "showing left above the limits",
        2.9,
        Mark.Anchor.MIDDLE,
        -90,
        Ink.LINE,
        false);
    pencil.on("frontier");
    List<Vec2> stair = new ArrayList<>();
    for (Step s : steps) {
      double x = x(s.price(), x0, x1);
      if (!stair.isEmpty()) {
        stair.add(new Vec2(x, stair.get(stair.size() - 1).y()));
      }
      stair.add(new Vec2(x, y(s.excess(), y1)));
    }
    if (stair.size() > 1) {
      pencil.run(stair, Pen.full(Ink.ACCENT, 0.6));
    }
    for (Step s : steps) {
      String hover = number(s.price(), 1) + " " + money + ": " + s.words();
      double r = s.marked() ? 2 : 1.1;
      double x = x(s.price(), x0, x1);
      double y = y(s.excess(), y1);
      pencil.area(
          List.of(diamond(x, y, r)),
          Optional.of(s.marked() ? Ink.PLAIN : Ink.ACCENT),
          Optional.of(Pen.full(Ink.PAPER, 0.3)),
          hover,
          "");
    }
    for (Step s : steps) {
      if (s.marked()) {
        Lettering price = new Lettering(number(s.price(), 1) + " " + money, 3, Ink.LINE, true);
        pencil.place(price.around(new Vec2(x(s.price(), x0, x1), y(s.excess(), y1)), 2));
      }
    }
    String description =
        steps.size()
            + " plans, from "
            + number(steps.get(0).price(), 1)
            + " to "
            + number(steps.get(steps.size() - 1).price(), 1)
            + " "
            + money
            + ".";
    return pencil.drawing(
        id,
        "What money buys: price against what still shows",
        description,
        PAGE,
        TOP + HEIGHT + 13);
  }

  private static List<Vec2> diamond(double x, double y, double r) {
    return List.of(new Vec2(x, y - r), new Vec2(x + r, y), new Vec2(x, y + r), new Vec2(x - r, y));
  }

  private static double x(double price, double x0, double x1) {
    return LEFT + WIDTH * (price - x0) / (x1 - x0);
  }

  private static double y(double excess, double y1) {
    return TOP + HEIGHT * (1 - excess / y1);
  }

  private static String number(double value, double step) {
    int digits = step >= 1 ? 0 : (int) Math.ceil(-Math.log10(step) - 1e-9);
    return String.format(Locale.ROOT, "%,." + digits + "f", value + 0.0);
  }

  /** A step of 1, 2 or 5 times a power of ten, not smaller than about the one asked for. */
  private static double round(double step) {
    double power = Math.pow(10, Math.floor(Math.log10(Math.max(step, 1e-9))));
    double m = step / power;
    return power * (m <= 1 ? 1 : m <= 2 ? 2 : m <= 5 ? 5 : 10);
  }
}
