package slantlight.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import slantlight.board.CuttingPlan.Cut;
import slantlight.scene.BoardSize;

/**
 * Which pieces are cut from one board, so that little board is bought. Boards are scored and
 * snapped from edge to edge: first square across into segments, a segment along into strips, a
 * strip across into pieces. A cut takes no width (common practice, no source).
 *
 * <p>Boards are filled one after another, each led by the longest piece still to be cut and then as
 * full as it gets (the sequential heuristic of Haessler, "A heuristic programming solution to a
 * nonlinear cutting stock problem", Management Science 17, 1971). The best filling of a length is
 * found by trial of all choices, longest first, up to {@link #TRIALS}.
 */
final class Nesting {
  /** A piece this much larger than its board still counts as that large, m. */
  static final double FITS = 3e-3;

  /** A length filled up to this is full, m. */
  private static final double FULL = 5e-3;

  private static final int TRIALS = 5_000;

  /** A fuller board must save this share of itself to be worth the cuts. */
  private static final double WORTH_A_CUT = 0.01;

  /**
   * A piece to cut.
   *
   * @param sizes boards it may be cut from when it is the first of its board
   */
  record Part(int piece, double length, double width, int tapered, List<BoardSize> sizes) {
    double area() {
      return length * width;
    }
  }

  /** A board with the pieces cut from it. */
  record Nest(BoardSize stock, List<Cut> cuts) {
    Nest {
      cuts = List.copyOf(cuts);
    }
  }

  /** A length of board across its whole width. */
  private record Segment(
      double length, double width, List<BoardSize> sizes, List<Cut> cuts, double area) {}

  /** Longest first; of equal ones the wider, then the earlier. */
  private static final Comparator<Part> LONGEST_FIRST =
      Comparator.comparingDouble((Part p) -> -p.length)
          .thenComparingDouble(p -> -p.width)
          .thenComparingInt(Part::piece);

  private Nesting() {}

  /** Boards for pieces of one thickness. */
  static List<Nest> of(List<Part> parts) {
    return boards(segments(parts));
  }

  private static List<Segment> segments(List<Part> parts) {
    List<Part> open = new ArrayList<>(parts);
    open.sort(LONGEST_FIRST);
    List<Segment> out = new ArrayList<>();
    while (!open.isEmpty()) {
      Part lead = open.remove(0);
      Segment best = null;
      List<Part> left = open;
      for (double width : widths(lead)) {
        List<Part> others = new ArrayList<>(open);
        Segment s = segment(lead, width, others);
        if (best == null || share(s) > share(best) + WORTH_A_CUT) {
          best = s;
          left = others;
        }
      }
      out.add(best);
      open = left;
    }
    return out;
  }

  private static double share(Segment s) {
    return s.area / (s.length * s.width);
  }

  /**
   * Widths of boards on offer that hold a piece, rising; for one with two tapered edges only its
   * own.
   */
  private static double[] widths(Part p) {
    double[] fit =
        p.sizes.stream()
            .filter(b -> b.length() > p.length - FITS)
            .mapToDouble(BoardSize::width)
            .filter(w -> w > p.width - FITS)
            .sorted()
            .distinct()
            .toArray();
    return p.tapered == 2 ? Arrays.copyOf(fit, Math.min(1, fit.length)) : fit;
  }

  /**
   * A piece and what is cut beside it.
   *
   * @param open loses the pieces cut beside it
   */
  private static Segment segment(Part lead, double width, List<Part> open) {
    List<Cut> cuts = new ArrayList<>();
    cuts.add(new Cut(lead.piece, 0, 0, lead.length, Math.min(lead.width, width)));
    double area = lead.area();
    if (lead.tapered < 2) {
      area += fill(new Strip(0, lead.length, lead.width, width, true), open, cuts);
    }
    return new Segment(lead.length, width, lead.sizes, cuts, area);
  }

  /**
   * What is left of a segment beside a piece.
   *
   * @param made true when its far edge is one that the board was made with
   */
  private record Strip(double x, double length, double near, double far, boolean made) {
    double width() {
      return far - near;
    }

    boolean holds(Part p) {
      return p.length <= length + 1e-6 && p.width <= width() + 1e-6 && p.tapered <= (made ? 1 : 0);
    }

    Cut place(Part p, double along) {
      double y = atFar(p) ? far - p.width : near;
      return new Cut(p.piece, along, y, p.length, p.width);
    }

    /** A piece that needs no such edge leaves it to the next. */
    boolean atFar(Part p) {
      return made && p.tapered == 1;
    }

    Strip beside(Part p, double along) {
      return atFar(p)
          ? new Strip(along, p.length, near, far - p.width, false)
          : new Strip(along, p.length, near + p.width, far, made);
    }
  }

  /** Cuts as much as it can from a strip; returns its area, m2. */
  private static double fill(Strip strip, List<Part> open, List<Cut> cuts) {
    List<Part> fit = open.stream().filter(strip::holds).toList();
    if (fit.isEmpty()) {
      return 0;
    }
    double[] length = fit.stream().mapToDouble(Part::length).toArray();
    double[] area = fit.stream().mapToDouble(Part::area).toArray();
    List<Part> chosen = Filling.best(length, area, strip.length).stream().map(fit::get).toList();
    open.removeAll(chosen);
    double along = strip.x;
    double sum = 0;
    for (Part p : chosen) {
      cuts.add(strip.place(p, along));
      sum += p.area() + fill(strip.beside(p, along), open, cuts);
      along += p.length;
    }
    return sum;
  }

  private static List<Nest> boards(List<Segment> segments) {
    List<Segment> open = new ArrayList<>(segments);
    open.sort(Comparator.comparingDouble(s -> -s.length)); // stable: equal ones keep their order
    List<Nest> out = new ArrayList<>();
    while (!open.isEmpty()) {
      Segment lead = open.remove(0);
      List<Segment> like = open.stream().filter(s -> sameWidth(s.width, lead.width)).toList();
      double[] length = like.stream().mapToDouble(Segment::length).toArray();
      BoardSize stock = null;
      List<Integer> with = List.of();
      double best = 0;
      for (BoardSize size : sizes(lead)) {
        List<Integer> more = Filling.best(length, length, size.length() - lead.length);
        double full = lead.length + more.stream().mapToDouble(i -> length[i]).sum();
        if (stock == null || full / size.length() > best + WORTH_A_CUT) {
          stock = size;
          with = more;
          best = full / size.length();
        }
      }
      List<Segment> chosen = with.stream().map(like::get).toList();
      open.removeAll(chosen);
      out.add(nest(stock, lead, chosen));
    }
    return out;
  }

  /** Boards that hold a segment, shortest first. */
  private static List<BoardSize> sizes(Segment s) {
    return s.sizes.stream()
        .filter(b -> sameWidth(b.width(), s.width) && b.length() > s.length - FITS)
        .sorted(Comparator.comparingDouble(BoardSize::length))
        .toList();
  }

  private static boolean sameWidth(double a, double b) {
    return Math.abs(a - b) < 1e-4;
  }

  private static Nest nest(BoardSize stock, Segment lead, List<Segment> others) {
    List<Cut> cuts = new ArrayList<>(lead.cuts);
    double along = lead.length;
    for (Segment s : others) {
      for (Cut c : s.cuts) {
        cuts.add(new Cut(c.piece(), c.x() + along, c.y(), c.length(), c.width()));
      }
      along += s.length;
    }
    return new Nest(stock, cuts);
  }

  /** Which lengths fill a room best: depth-first, longest first. */
  private static final class Filling {
    private final double[] length;
    private final double[] value;

    /** Largest value of a metre among this and all that follow. */
    private final double[] density;

    private final List<Integer> taken = new ArrayList<>();
    private List<Integer> best = List.of();
    private double most;
    private int trials;

    private Filling(double[] length, double[] value) {
      this.length = length;
      this.value = value;
      density = new double[length.length + 1];
      for (int i = length.length - 1; i >= 0; i--) {
        density[i] = Math.max(density[i + 1], value[i] / length[i]);
      }
    }

    /**
     * Numbers of the lengths of largest total value that fit.
     *
     * @param length longest first, m
     */
    static List<Integer> best(double[] length, double[] value, double room) {
      Filling f = new Filling(length, value);
      f.search(0, room, 0);
      return f.best;
    }

    private void search(int from, double room, double sum) {
      if (sum > most + 1e-9) {
        most = sum;
        best = new ArrayList<>(taken);
      }
      for (int i = from; i < length.length; i++) {
        if (trials >= TRIALS || room < FULL || sum + room * density[i] <= most + 1e-9) {
          return;
        }
        boolean again =
            i > from && length[i] == length[i - 1] && value[i] == value[i - 1]; // tried already
        if (!again && length[i] <= room + 1e-6) {
          trials++;
          taken.add(i);
          search(i + 1, room - length[i], sum + value[i]);
          taken.remove(taken.size() - 1);
        }
      }
    }
  }
}
