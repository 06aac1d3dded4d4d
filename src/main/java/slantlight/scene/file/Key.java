package slantlight.scene.file;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What one key of the scene file means and may hold. The binder, the JSON Schema and the reference
 * table in docs/scene.md all read it from here.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD})
public @interface Key {
  /** What it means, for the user. */
  String value();

  /** True when the object makes no sense without it. */
  boolean required() default false;

  /** Smallest number, m for a length, the number itself else. */
  double min() default Double.NEGATIVE_INFINITY;

  /** Largest number, m for a length, the number itself else. */
  double max() default Double.POSITIVE_INFINITY;

  /** Fewest items of a list. */
  int fewest() default 0;

  /** Most items of a list. */
  int most() default 1000;
}
