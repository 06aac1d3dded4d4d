package slantlight.board;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Material coverage rules, read from the data file beside this class, which names their sources.
 */
public final class Coverage {
  private static final Coverage SHIPPED = read("coverage.csv");

  private final Map<String, Rule> rules;

  /**
   * One rule.
   *
   * @param mark "published", "from memory", "common practice" or how else the value is known
   */
  public record Rule(double value, String unit, String mark, String source) {}

  private Coverage(Map<String, Rule> rules) {
    this.rules = rules;
  }

  /** The rules that come with the program. */
  public static Coverage shipped() {
    return SHIPPED;
  }

  /** Wet ready-mixed compound for all coats up to a finish level from 0 to 5, litres per m2. */
  public double compound(int level) {
    return rule("compound." + level).value();
  }

  /** Share to add to the tape that is measured when it is ordered. */
  public double tapeWaste() {
    return rule("tape.waste").value();
  }

  /**
   * A rule by its key.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Rule rule(String key) {
    Rule r = rules.get(key);
    if (r == null) {
      throw new IllegalArgumentException(
          "no coverage rule " + key + "; there are " + rules.keySet());
    }
    return r;
  }

  private static Coverage read(String name) {
    Map<String, Rule> rules = new LinkedHashMap<>();
    try (InputStream in = Coverage.class.getResourceAsStream(name);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      lines
          .lines()
          .filter(l -> !l.startsWith("#") && !l.startsWith("key,"))
          .map(l -> l.split(",", 5))
          .forEach(c -> rules.put(c[0], new Rule(Double.parseDouble(c[1]), c[2], c[3], c[4])));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Coverage(rules);
  }
}
