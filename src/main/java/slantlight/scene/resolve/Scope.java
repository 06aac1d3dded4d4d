package slantlight.scene.resolve;

import java.util.Collection;
import java.util.Optional;
import slantlight.scene.file.Binder;
import slantlight.scene.file.Faults;
import slantlight.units.Length;
import slantlight.units.Measures;

/**
 * Where the parts of the resolver tell what is wrong.
 *
 * @param binder knows the place of every record
 * @param warnings things allowed but probably not meant
 */
record Scope(Binder binder, Faults warnings) {
  /** Adds a fault at a key of a record of the file. */
  void fault(Object record, String key, String what, String expected) {
    binder.faults().add(binder.place(record, key), what, expected);
  }

  /** Adds a fault at a record of the file, or at a value that knows its place. */
  void fault(Object record, String what, String expected) {
    binder.faults().add(binder.place(record), what, expected);
  }

  /**
   * True when a value is missing; adds a fault unless the key is written, for then what is wrong
   * with it has been told.
   */
  boolean lacks(Object record, String key, Object value, String what, String expected) {
    if (value == null && !binder.has(record, key)) {
      fault(record, what, expected);
    }
    return value == null;
  }

  /** Adds a fault about a name that is not known. */
  void unknown(Object record, String key, String what, Collection<String> known) {
    String word = what.substring(what.indexOf('"') + 1, what.lastIndexOf('"'));
    Optional<String> nearest = Faults.nearest(word, known);
    String list = known.size() > 30 ? known.size() + " names" : String.join(", ", known);
    binder
        .faults()
        .add(
            binder.place(record, key),
            what,
            known.isEmpty() ? "there is none to choose from" : "known: " + list,
            nearest);
  }

  void warn(Object record, String key, String what, String expected) {
    warnings.add(binder.place(record, key), what, expected);
  }

  /** A length in the manner of the scene. */
  String length(double metres) {
    return new Length(metres).format(binder.units());
  }

  /** An area in the manner of the scene. */
  String area(double squareMetres) {
    return binder.units().imperial()
        ? String.format(java.util.Locale.ROOT, "%.1f sq ft", squareMetres / Measures.SQUARE_FOOT)
        : String.format(java.util.Locale.ROOT, "%.2f m2", squareMetres);
  }
}
