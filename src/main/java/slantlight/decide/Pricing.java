package slantlight.decide;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import slantlight.geom.Vec3;
import slantlight.scene.House;
import slantlight.scene.Rates;
import slantlight.scene.Room;
import slantlight.scene.RoomUse;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;
import slantlight.units.Measures;

/**
 * What remedies cost: in the user's own money when the scene has rates, else in area of extra work.
 *
 * <p>Prices are rounded up to whole units: one unit of the currency, a square foot, or a tenth of a
 * square metre. Paint chosen before it is bought is free. A remedy for which the scene has no rate
 * has no price; it is listed but not planned with. By area, a level costs the surface's area,
 * back-blocking a band of 0.3 m along the joint, a shade the area of its opening, longer boards the
 * area that is wasted more, and a lamp one square metre.
 */
public final class Pricing {
  private static final double BLOCK_BAND = 0.3;

  private final House house;
  private final Optional<Rates> rates;
  private final boolean feet;

  /** The smallest area told, m2. */
  private final double tick;

  public Pricing(House house) {
    this.house = house;
    this.rates = house.rates();
    this.feet = house.units().imperial();
    this.tick = feet ? Measures.SQUARE_FOOT : 0.1;
  }

  /** True when prices are areas, for want of rates. */
  public boolean byArea() {
    return rates.isEmpty();
  }

  /** The user's word for the money, or "ft2" or "m2". */
  public String unit() {
    return rates.map(Rates::currency).orElseGet(() -> Measures.typed(house.units()).areaUnit());
  }

  /** A price as a number of {@link #unit}. */
  public String number(long price) {
    return tenths() ? String.format(Locale.ROOT, "%.1f", amount(price)) : Long.toString(price);
  }

  /** A price in its {@link #unit}. */
  public double amount(long price) {
    return tenths() ? price / 10.0 : price;
  }

  private boolean tenths() {
    return byArea() && !feet;
  }

  /** Whole price units of an amount of money (or area) typed by the user, rounded down. */
  public long units(double amount) {
    return (long) Math.floor((tenths() ? amount * 10 : amount) + 1e-9);
  }

  /** Finishing to a level instead of another. */
  OptionalLong finish(String surfaceId, int from, int to) {
    Surface surface = house.surface(surfaceId);
    double area = surface.face().area() * (1 - Verdicts.coveredShare(surface));
    if (rates.isEmpty()) {
      return OptionalLong.of(ticks(area * Integer.signum(to - from)));
    }
    Map<Integer, Double> per = rates.get().perAreaByLevel();
    if (from == to) {
      return OptionalLong.of(0);
    }
    if (!per.containsKey(from) || !per.containsKey(to)) {
      return OptionalLong.empty();
    }
    return OptionalLong.of(ticks(area * (per.get(to) - per.get(from)) * factor(surface)));
  }

  /** Buying more board area than before; less is not paid back. */
  OptionalLong boards(double before, double after) {
    double more = Math.max(0, after - before);
    if (rates.isEmpty() || more == 0) {
      return OptionalLong.of(ticks(more));
    }
    return money(rates.get().perBoard().map(p -> p * more));
  }

  /** Back-blocking a length of joint, m. */
  OptionalLong backBlock(String surfaceId, double length) {
    if (rates.isEmpty()) {
      return OptionalLong.of(ticks(length * BLOCK_BAND));
    }
    double factor = factor(house.surface(surfaceId));
    return money(rates.get().perJointLength().map(p -> p * length * factor));
  }

  /** House-wide changes: shades and lamps. */
  OptionalLong houseWide(List<Remedy> changes) {
    long sum = 0;
    for (Remedy r : changes) {
      OptionalLong one = houseWide(r);
      if (one.isEmpty()) {
        return one;
      }
      sum += one.getAsLong();
    }
    return OptionalLong.of(sum);
  }

  /** One house-wide change; empty without a rate for it. */
  public OptionalLong houseWide(Remedy r) {
    if (r instanceof Remedy.ShadeOpening shade) {
      double area = Edits.findOpening(house, shade.subject()).orElseThrow().face().area();
      return byArea()
          ? OptionalLong.of(ticks(area))
          : money(rates.get().perShadeArea().map(p -> p * area));
    }
    return byArea() ? OptionalLong.of(ticks(1)) : money(rates.get().perLamp());
  }

  /** Extra for high work, see {@link Rates}. */
  private double factor(Surface surface) {
    Room room = house.room(surface.roomId());
    double top =
        surface.face().corners().stream().mapToDouble(Vec3::z).max().orElseThrow() - room.floor();
    boolean high =
        surface.kind() == SurfaceKind.CEILING
            || room.use() == RoomUse.STAIR
            || top > rates.orElseThrow().highFrom();
    return high ? rates.orElseThrow().highFactor() : 1;
  }

  private OptionalLong money(Optional<Double> amount) {
    return amount.isEmpty() ? OptionalLong.empty() : OptionalLong.of(ticks(amount.get()));
  }

  private long ticks(double amount) {
    return (long) Math.ceil((byArea() ? amount / tick : amount) - 1e-9);
  }
}
