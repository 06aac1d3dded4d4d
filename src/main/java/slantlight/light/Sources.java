package slantlight.light;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import slantlight.scene.House;
import slantlight.scene.Opening;

/** The names of a house's sources, as told to a person. */
final class Sources {
  static final Source BOUNCED = new Source(SourceKind.BOUNCE, "", "light bounced inside");

  private final List<Map<SourceKind, Source>> byOpening = new ArrayList<>();
  private final List<Source> lamps;

  Sources(House house) {
    for (Opening o : house.openings()) {
      Map<SourceKind, Source> map = new EnumMap<>(SourceKind.class);
      for (SourceKind kind : SourceKind.values()) {
        map.put(kind, new Source(kind, o.id(), beginning(kind) + " through " + called(o.label())));
      }
      byOpening.add(map);
    }
    lamps =
        house.lamps().stream()
            .map(l -> new Source(SourceKind.LAMP, l.id(), "lamp " + l.label()))
            .toList();
  }

  private static String beginning(SourceKind kind) {
    return switch (kind) {
      case SUN -> "sun";
      case SKY -> "sky light";
      case GROUND -> "ground light";
      case WATER -> "light off the water";
      case BLOCK -> "light off walls outside";
      case LAMP -> "lamp light";
      case BOUNCE -> "bounced light";
    };
  }

  /** A label of several words gets an article; a mark such as W3 does not. */
  private static String called(String label) {
    return label.indexOf(' ') < 0 || label.startsWith("the ") ? label : "the " + label;
  }

  Source through(SourceKind kind, Aperture aperture) {
    return byOpening.get(aperture.index).get(kind);
  }

  Source lamp(int lamp) {
    return lamps.get(lamp);
  }
}
