package slantlight.cli;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A share of a list of work that several processes or machines split among them without talking to
 * each other: the {@code number}-th of {@code of} parts takes every {@code of}-th item.
 *
 * @param number from 1 to {@code of}
 */
record Part(int number, int of) {
  /** Everything. */
  static final Part WHOLE = new Part(1, 1);

  /**
   * A part written as {@code i/n}.
   *
   * @throws CommandFailure if it is written otherwise or i is not from 1 to n
   */
  static Part parse(String text) {
    if (text.matches("[0-9]{1,6}/[0-9]{1,6}")) {
      int slash = text.indexOf('/');
      int number = Integer.parseInt(text.substring(0, slash));
      int of = Integer.parseInt(text.substring(slash + 1));
      if (number >= 1 && number <= of) {
        return new Part(number, of);
      }
    }
    throw CommandFailure.usage(
        "--part " + text + ": give i/n with i from 1 to n, such as 1/4, 2/4, 3/4 and 4/4");
  }

  /** This part of a list, in the order of the list. */
  <T> List<T> of(List<T> all) {
    return IntStream.range(0, all.size())
        .filter(i -> i % of == number - 1)
        .mapToObj(all::get)
        .toList();
  }
}
