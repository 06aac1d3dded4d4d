package slantlight.scene;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import slantlight.units.LengthUnit;

/**
 * A scene, checked and resolved: SI units, world coordinates (x east, y north, z up), ids unique.
 *
 * @param name what the user calls it
 * @param note the author's note, such as "An invented house"
 * @param prescribed light stated outright, if the scene does
 * @param scale the regional scale to print beside the level
 */
public record House(
    String name,
    String note,
    Site site,
    List<Room> rooms,
    List<Surface> surfaces,
    List<Opening> openings,
    List<Lamp> lamps,
    Outside outside,
    List<Eye> eyes,
    Optional<Rates> rates,
    Optional<PrescribedLight> prescribed,
    LevelScale scale) {
  public House {
    rooms = List.copyOf(rooms);
    surfaces = List.copyOf(surfaces);
    openings = List.copyOf(openings);
    lamps = List.copyOf(lamps);
    eyes = List.copyOf(eyes);
  }

  /**
   * The room of that id.
   *
   * @throws NoSuchElementException if there is none
   */
  public Room room(String id) {
    return rooms.stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  /**
   * The surface of that id.
   *
   * @throws NoSuchElementException if there is none
   */
  public Surface surface(String id) {
    return surfaces.stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  /**
   * Feet when every board on offer is a whole number of inches wide, else metres: what the people
   * who build it measure in, whatever unit the scene was drawn in. Feet where no board is on offer.
   */
  public LengthUnit units() {
    boolean inches =
        surfaces.stream().flatMap(x -> x.boards().stream()).allMatch(BoardOffer::inInches);
    return inches ? LengthUnit.FT : LengthUnit.M;
  }

  /**
   * Share of its light that each lamp gives at a clock time, in the lamps' order: 1 or 0.
   *
   * @param sunAltitude radians
   */
  public List<Double> lampShares(LocalTime time, double sunAltitude) {
    List<Double> shares = new ArrayList<>(lamps.size());
    for (Lamp lamp : lamps) {
      shares.add(lamp.lit(time, sunAltitude) ? 1.0 : 0.0);
    }
    return shares;
  }

  /**
   * One room by itself: its doors stay shut and its passages open to darkness. Enough to see what
   * its own lamps and windows do to its own surfaces, at a fraction of the work.
   */
  public House alone(String roomId) {
    return new House(
        name,
        note,
        site,
        rooms.stream().filter(r -> r.id().equals(roomId)).toList(),
        surfaces.stream().filter(s -> s.roomId().equals(roomId)).toList(),
        openings.stream().filter(o -> o.roomId().equals(roomId) && o.toRoomId().isEmpty()).toList(),
        lamps.stream().filter(l -> l.roomId().equals(roomId)).toList(),
        outside,
        eyes.stream().filter(e -> e.roomId().equals(roomId)).toList(),
        rates,
        prescribed,
        scale);
  }

  /** This house on another site. */
  public House withSite(Site newSite) {
    return new House(
        name,
        note,
        newSite,
        rooms,
        surfaces,
        openings,
        lamps,
        outside,
        eyes,
        rates,
        prescribed,
        scale);
  }

  /** This house with other rooms. */
  public House withRooms(List<Room> newRooms) {
    return new House(
        name,
        note,
        site,
        newRooms,
        surfaces,
        openings,
        lamps,
        outside,
        eyes,
        rates,
        prescribed,
        scale);
  }

  /** This house with other surfaces. */
  public House withSurfaces(List<Surface> newSurfaces) {
    return new House(
        name,
        note,
        site,
        rooms,
        newSurfaces,
        openings,
        lamps,
        outside,
        eyes,
        rates,
        prescribed,
        scale);
  }

  /** This house with other openings. */
  public House withOpenings(List<Opening> newOpenings) {
    return new House(
        name,
        note,
        site,
        rooms,
        surfaces,
        newOpenings,
        lamps,
        outside,
        eyes,
        rates,
        prescribed,
        scale);
  }

  /** This house with other lamps. */
  public House withLamps(List<Lamp> newLamps) {
    return new House(
        name,
        note,
        site,
        rooms,
        surfaces,
        openings,
        newLamps,
        outside,
        eyes,
        rates,
        prescribed,
        scale);
  }

  /** This house in other surroundings. */
  public House withOutside(Outside newOutside) {
    return new House(
        name,
        note,
        site,
        rooms,
        surfaces,
        openings,
        lamps,
        newOutside,
        eyes,
        rates,
        prescribed,
        scale);
  }

  /** This house under a light stated outright. */
  public House withPrescribed(PrescribedLight newPrescribed) {
    return new House(
        name,
        note,
        site,
        rooms,
        surfaces,
        openings,
        lamps,
        outside,
        eyes,
        rates,
        Optional.of(newPrescribed),
        scale);
  }
}
