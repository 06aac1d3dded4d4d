package slantlight.decide;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import slantlight.geom.Vec3;
import slantlight.scene.BoardOffer;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.House;
import slantlight.scene.Lamp;
import slantlight.scene.Opening;
import slantlight.scene.Paint;
import slantlight.scene.Shade;
import slantlight.scene.Sheen;
import slantlight.scene.Surface;
import slantlight.units.Measures;

/** One change that makes joints show less; a pure function from house to house. */
public sealed interface Remedy {
  /** The surface, opening or lamp that it changes. */
  String subject();

  /** What is done, for a person, such as "turn the boards"; metric. */
  String words();

  /** What is done, in the reader's measures. */
  default String words(Measures reader) {
    return words();
  }

  /** Who has to agree. */
  Set<Agreement> agree();

  /** The house with the change made; the house itself for a change of the joints' make alone. */
  House apply(House house);

  /** True when the light in the house changes with it. */
  default boolean relights() {
    return false;
  }

  /** Finish to another level. */
  record Finish(String subject, int level) implements Remedy {
    @Override
    public String words() {
      return "finish to level " + level;
    }

    @Override
    public Set<Agreement> agree() {
      return EnumSet.of(Agreement.BUILDER, Agreement.CLIENT);
    }

    @Override
    public House apply(House house) {
      return Edits.surface(house, house.surface(subject).withLevel(level));
    }
  }

  /** Run the long edges the other way. */
  record TurnBoards(String subject, BoardRun run) implements Remedy {
    @Override
    public String words() {
      return run == BoardRun.ALONG_FRAMING
          ? "turn the boards along the framing"
          : "turn the boards across the framing";
    }

    @Override
    public Set<Agreement> agree() {
      return EnumSet.of(Agreement.BUILDER);
    }

    @Override
    public House apply(House house) {
      Surface s = house.surface(subject);
      BoardOffer o = s.boards().orElseThrow();
      BoardOffer turned = new BoardOffer(o.sizes(), o.thickness(), run, o.carry());
      return Edits.surface(house, s.withBoards(turned));
    }
  }

  /** Bring in more sizes of board, and take the long ones in before the way is closed. */
  record MoreBoards(String subject, String words, List<BoardSize> sizes) implements Remedy {
    public MoreBoards {
      sizes = List.copyOf(sizes);
    }

    @Override
    public Set<Agreement> agree() {
      return EnumSet.of(Agreement.BUILDER);
    }

    @Override
    public House apply(House house) {
      Surface s = house.surface(subject);
      BoardOffer o = s.boards().orElseThrow();
      double longest = sizes.stream().mapToDouble(BoardSize::length).max().orElse(0);
      BoardOffer more = new BoardOffer(sizes, o.thickness(), o.run(), Math.max(o.carry(), longest));
      return Edits.surface(house, s.withBoards(more));
    }
  }

  /** Back-block the square ends, so that the joint lies in a shallow recess. */
  record BackBlock(String subject) implements Remedy {
    @Override
    public String words() {
      return "back-block the butt joints";
    }

    @Override
    public Set<Agreement> agree() {
      return EnumSet.of(Agreement.BUILDER);
    }

    @Override
    public House apply(House house) {
      return house;
    }
  }

  /** Paint with less sheen. */
  record LowerSheen(String subject, Sheen sheen) implements Remedy {
    @Override
    public String words() {
      return "paint it " + sheen.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public Set<Agreement> agree() {
      return EnumSet.of(Agreement.DESIGNER, Agreement.CLIENT);
    }

    @Override
    public House apply(House house) {
      Surface s = house.surface(subject);
      return Edits.surface(house, s.withPaint(new Paint(s.paint().lrv(), sheen)));
    }
  }

  /**
   * Paint it lighter. The light that the lighter paint adds to the room is left out when the change
   * is weighed by itself, which is on the safe side: bounced light fills the ridges' shade.
   */
  record LighterColour(String subject, double lrv) implements Remedy {
    @Override
    public String words() {
      return String.format(Locale.ROOT, "paint it lighter, LRV %.0f or more", 100 * lrv);
    }

    @Override
    public Set<Agreement> agree() {
      return EnumSet.of(Agreement.DESIGNER, Agreement.CLIENT);
    }

    @Override
    public House apply(House house) {
      Surface s = house.surface(subject);
      return Edits.surface(house, s.withPaint(new Paint(lrv, s.paint().sheen())));
    }
  }

  /** Shade an opening or put film on its glass. */
  record ShadeOpening(String subject, String label, Shade shade) implements Remedy {
    @Override
    public String words() {
      return String.format(
          Locale.ROOT,
          shade.diffusing()
              ? "cloth shade (%.0f %% through) on the %s"
              : "film (%.0f %% through) on the %s",
          100 * shade.transmittance(),
          label);
    }

    @Override
    public Set<Agreement> agree() {
      return EnumSet.of(Agreement.DESIGNER, Agreement.CLIENT);
    }

    @Override
    public House apply(House house) {
      Opening opening = Edits.findOpening(house, subject).orElseThrow();
      return Edits.opening(house, opening.withShade(shade));
    }

    @Override
    public boolean relights() {
      return true;
    }
  }

  /**
   * Mount a lamp farther from the surface that it rakes.
   *
   * @param by displacement, world, m
   */
  record MoveLamp(String subject, String label, Vec3 by) implements Remedy {
    @Override
    public String words() {
      return words(Measures.METRIC);
    }

    @Override
    public String words(Measures reader) {
      return "mount the " + label + " " + reader.length(by.length()) + " farther off";
    }

    @Override
    public Set<Agreement> agree() {
      return EnumSet.of(Agreement.BUILDER, Agreement.DESIGNER);
    }

    @Override
    public House apply(House house) {
      Lamp lamp = Edits.findLamp(house, subject).orElseThrow();
      return Edits.lamp(house, lamp.placed(lamp.position().plus(by), lamp.aim(), lamp.c0()));
    }

    @Override
    public boolean relights() {
      return true;
    }
  }

  /**
   * Aim a lamp away from the surface that it rakes.
   *
   * @param axis unit axis of the turn, world
   * @param angle right-handed about the axis, radians
   */
  record AimLamp(String subject, String label, Vec3 axis, double angle) implements Remedy {
    @Override
    public String words() {
      return String.format(
          Locale.ROOT, "turn the %s away by %.0f degrees", label, Math.toDegrees(angle));
    }

    @Override
    public Set<Agreement> agree() {
      return EnumSet.of(Agreement.BUILDER, Agreement.DESIGNER);
    }

    @Override
    public House apply(House house) {
      Lamp l = Edits.findLamp(house, subject).orElseThrow();
      Turn turn = new Turn(axis, angle);
      return Edits.lamp(
          house, l.placed(l.position(), turn.direction(l.aim()), turn.direction(l.c0())));
    }

    @Override
    public boolean relights() {
      return true;
    }
  }
}
