package slantlight.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import slantlight.scene.BoardRun;
import slantlight.scene.BoardSize;
import slantlight.scene.Surface;
import slantlight.scene.SurfaceKind;

/**
 * Which boards to buy and what is cut from each: what is left of one board serves later pieces, on
 * any surface with boards of its thickness.
 *
 * @param pieces in the order they are hung: ceilings before walls before the rest (common
 *     practice), on walls the top row first
 * @param sheets boards to buy, in the order they are first cut
 */
public record CuttingPlan(List<Piece> pieces, List<Sheet> sheets) {
  public CuttingPlan {
    pieces = List.copyOf(pieces);
    sheets = List.copyOf(sheets);
  }

  /** A piece to hang. */
  public record Piece(Surface surface, BoardRun run, PlacedBoard board) {}

  /**
   * A board to buy.
   *
   * @param cuts what is cut from it, in the order of hanging
   */
  public record Sheet(Stock stock, List<Cut> cuts) {
    public Sheet {
      cuts = List.copyOf(cuts);
    }
  }

  /**
   * A piece on its board.
   *
   * @param piece its place in {@link CuttingPlan#pieces}
   * @param x from a short edge of the board, m
   * @param y from a long edge of the board, m
   */
  public record Cut(int piece, double x, double y, double length, double width) {
    /** Place in the order of hanging, from 1. */
    public int order() {
      return piece + 1;
    }
  }

  /**
   * A plan for some surfaces.
   *
   * @param layouts of all these surfaces
   */
  public static CuttingPlan of(List<Surface> surfaces, List<Layout> layouts) {
    Map<String, Surface> byId =
        surfaces.stream().collect(Collectors.toMap(Surface::id, Function.identity()));
    List<Piece> pieces = new ArrayList<>();
    layouts.stream()
        .sorted(Comparator.comparingInt(l -> turn(byId.get(l.surfaceId()).kind())))
        .forEach(
            l ->
                l.boards()
                    .forEach(b -> pieces.add(new Piece(byId.get(l.surfaceId()), l.run(), b))));
    Map<Double, List<Nesting.Part>> byThickness = new LinkedHashMap<>();
    for (int i = 0; i < pieces.size(); i++) {
      double thickness = pieces.get(i).surface().boards().orElseThrow().thickness();
      byThickness.computeIfAbsent(thickness, t -> new ArrayList<>()).add(part(i, pieces.get(i)));
    }
    List<Sheet> sheets = new ArrayList<>();
    byThickness.forEach(
        (thickness, parts) -> Nesting.of(parts).forEach(n -> sheets.add(sheet(n, thickness))));
    sheets.sort(Comparator.comparingInt(s -> s.cuts().get(0).piece()));
    return new CuttingPlan(pieces, sheets);
  }

  private static int turn(SurfaceKind kind) {
    return switch (kind) {
      case CEILING -> 0;
      case WALL -> 1;
      case OTHER, FLOOR -> 2;
    };
  }

  private static Nesting.Part part(int number, Piece piece) {
    Blank blank = piece.board().blank();
    List<BoardSize> sizes = new ArrayList<>(Ground.carried(piece.surface().boards().orElseThrow()));
    boolean held =
        sizes.stream()
            .anyMatch(
                b ->
                    b.width() > blank.width() - Nesting.FITS
                        && b.length() > blank.length() - Nesting.FITS);
    if (!held) { // not on offer: fixed by the user, or brought in as a remedy
      sizes.add(piece.board().stock());
    }
    return new Nesting.Part(number, blank.length(), blank.width(), blank.tapered(), sizes);
  }

  private static Sheet sheet(Nesting.Nest nest, double thickness) {
    List<Cut> cuts = new ArrayList<>(nest.cuts());
    cuts.sort(Comparator.comparingInt(Cut::piece));
    return new Sheet(new Stock(nest.stock(), thickness), cuts);
  }

  /** How many boards to buy of each kind. */
  public SortedMap<Stock, Integer> order() {
    SortedMap<Stock, Integer> out = new TreeMap<>();
    sheets.forEach(s -> out.merge(s.stock(), 1, Integer::sum));
    return out;
  }

  /** Area bought, m2. */
  public double area() {
    return sheets.stream().mapToDouble(s -> s.stock().area()).sum();
  }
}
