package slantlight.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import slantlight.decide.Bench.Trial;
import slantlight.scene.House;
import slantlight.scene.Surface;
import slantlight.score.HouseScore;
import slantlight.score.SurfaceScore;
import slantlight.units.Progress;

/**
 * Weighs the remedies of every surface above its limit, alone and combined, by the same physics.
 *
 * <p>First every single change that makes sense is tried; then every combination of those that help
 * by themselves; then the house-wide changes (shades, lamps) that act on the causes, and under each
 * set of them the best recipes of the surfaces they reach. Finish levels multiply all of these: the
 * score holds levels 3 to 5 at once.
 */
public final class RemedyFinder {
  /** A change counts as helping when it takes this share off the peak. */
  private static final double HELPS = 0.01;

  /** Most single changes that are combined with each other on one surface. */
  private static final int COMBINED = 3;

  /** Most recipes of one surface, besides none, that are tried again under house-wide changes. */
  private static final int AGAIN = 1;

  private final House house;
  private final List<String> targets;
  private final Rescorer rescorer;
  private final Pricing pricing;
  private final int houseWide;
  private final Progress progress;
  private final Bench bench;
  private final HouseScore year;
  private Judge judge;

  private RemedyFinder(
      HouseScore year,
      List<String> targets,
      Rescorer rescorer,
      Pricing pricing,
      int houseWide,
      Progress progress) {
    this.year = year;
    this.house = year.house();
    this.targets = targets;
    this.rescorer = rescorer;
    this.pricing = pricing;
    this.houseWide = houseWide;
    this.progress = progress;
    this.bench = new Bench(year);
  }

  /**
   * Studies the remedies of some surfaces.
   *
   * @param year the score over the whole year
   * @param targets ids of scored surfaces, such as {@link #aboveLimit}
   * @param houseWide most shades and lamps studied, 0 to 3, the worst culprits first
   */
  public static RemedyStudy study(
      HouseScore year,
      List<String> targets,
      Rescorer rescorer,
      Pricing pricing,
      int houseWide,
      Progress progress) {
    return new RemedyFinder(year, targets, rescorer, pricing, houseWide, progress).study();
  }

  /** The surfaces that show more than their room bears at their {@link Baseline} level. */
  public static List<String> aboveLimit(HouseScore year) {
    return year.surfaces().stream()
        .filter(s -> Baseline.tooMuch(year.house(), s))
        .map(SurfaceScore::surfaceId)
        .toList();
  }

  private RemedyStudy study() {
    Rescorer.Lit lit = rescorer.light(house);
    Map<String, List<Remedy>> nothing = new LinkedHashMap<>();
    targets.forEach(id -> nothing.put(id, List.of()));
    HouseScore before = score(bench.run(lit, house, nothing));
    judge = new Judge(year, before);
    Map<String, List<Trial>> trials = new LinkedHashMap<>();
    before.surfaces().forEach(s -> trials.put(s.surfaceId(), asItIs(s)));
    if (targets.isEmpty()) {
      return new RemedyStudy(before, List.of(), List.of(new Menu(List.of(), 0, List.of())));
    }
    progress.at("remedies, one by one", 0.1);
    add(trials, bench.runAll(lit, house, singles(before)));
    add(trials, new ColourSearch(house, bench, judge).search(lit, before));
    progress.at("remedies, combined", 0.4);
    add(trials, bench.runAll(lit, house, combinations(trials)));
    progress.at("shades and lamps", 0.6);
    List<List<HouseWide>> wide =
        new HouseWideSearch(house, bench, rescorer, judge).search(before, houseWide, progress);
    List<RemedyLine> lines = new ArrayList<>();
    List<Menu> menus = new ArrayList<>();
    menus.add(menu(List.of(), 0, trials));
    trials.forEach((id, list) -> lines.addAll(lines(id, list)));
    List<HouseWide> best = new ArrayList<>();
    for (List<HouseWide> choice : wide) {
      double least = Double.POSITIVE_INFINITY;
      HouseWide kindest = null;
      for (HouseWide one : choice) {
        Map<String, List<Trial>> under = wide(one.changes(), trials, before, lines, menus);
        double left = excess(under);
        if (left < least) {
          least = left;
          kindest = one;
        }
      }
      best.add(kindest);
    }
    for (List<HouseWide> together : Subsets.of(best)) {
      if (together.size() >= 2) {
        List<Remedy> changes = together.stream().flatMap(w -> w.changes().stream()).toList();
        wide(changes, trials, before, lines, menus);
      }
    }
    lines.sort(order());
    return new RemedyStudy(before, lines, menus);
  }

  private HouseScore score(Map<String, SurfaceScore> surfaces) {
    return new HouseScore(house, List.copyOf(surfaces.values()), 0, 0, 0, 0);
  }

  private static List<Trial> asItIs(SurfaceScore score) {
    List<Trial> out = new ArrayList<>();
    out.add(new Trial(List.of(), score));
    return out;
  }

  private static void add(Map<String, List<Trial>> trials, Map<String, List<Trial>> more) {
    more.forEach((id, list) -> trials.get(id).addAll(list));
  }

  private Map<String, List<List<Remedy>>> singles(HouseScore before) {
    Map<String, List<List<Remedy>>> out = new LinkedHashMap<>();
    for (SurfaceScore s : before.surfaces()) {
      Surface surface = house.surface(s.surfaceId());
      List<List<Remedy>> recipes = new ArrayList<>();
      Candidates.boards(surface, s).forEach(r -> recipes.add(List.of(r)));
      Candidates.backBlock(s).ifPresent(r -> recipes.add(List.of(r)));
      Candidates.sheen(house, surface).ifPresent(r -> recipes.add(List.of(r)));
      out.put(s.surfaceId(), recipes);
    }
    return out;
  }

  /** Every combination of two or more changes that help by themselves. */
  private Map<String, List<List<Remedy>>> combinations(Map<String, List<Trial>> trials) {
    Map<String, List<List<Remedy>>> out = new LinkedHashMap<>();
    for (Map.Entry<String, List<Trial>> e : trials.entrySet()) {
      double before = showing(e.getValue().get(0));
      List<Remedy> pool = new ArrayList<>();
      boolean sizes = false;
      List<Trial> best =
          e.getValue().stream()
              .filter(t -> t.changes().size() == 1 && showing(t) < before * (1 - HELPS))
              .sorted(Comparator.comparingDouble(this::showing))
              .toList();
      for (Trial t : best) {
        Remedy r = t.changes().get(0);
        boolean more = r instanceof Remedy.MoreBoards;
        if (pool.size() < COMBINED && !(more && sizes)) {
          pool.add(r);
          sizes |= more;
        }
      }
      out.put(e.getKey(), Subsets.of(pool).stream().filter(subset -> subset.size() >= 2).toList());
    }
    return out;
  }

  /** Tries a house-wide change on every surface; adds what came of it, and returns it. */
  private Map<String, List<Trial>> wide(
      List<Remedy> changes,
      Map<String, List<Trial>> trials,
      HouseScore before,
      List<RemedyLine> lines,
      List<Menu> menus) {
    House changed = house;
    for (Remedy r : changes) {
      changed = r.apply(changed);
    }
    Map<String, List<Trial>> under = under(changed, trials);
    OptionalLong price = pricing.houseWide(changes);
    under.forEach((id, list) -> lines.addAll(wideLines(changes, price, id, list, before)));
    if (price.isPresent()) {
      menus.add(menu(changes, price.getAsLong(), under));
    }
    return under;
  }

  /** Excess of all surfaces, nothing done to them. */
  private double excess(Map<String, List<Trial>> trials) {
    return trials.values().stream()
        .map(list -> list.get(0).score())
        .mapToDouble(s -> judge.excess(s, Math.max(3, Baseline.level(house, s))))
        .sum();
  }

  /**
   * The trials of every surface under a house-wide change: a surface that it does not reach keeps
   * the old ones, another gets its best recipes tried again.
   */
  private Map<String, List<Trial>> under(House changed, Map<String, List<Trial>> trials) {
    Rescorer.Lit lit = rescorer.light(changed);
    Map<String, List<Remedy>> nothing = new LinkedHashMap<>();
    lit.reached(trials.values().stream().map(list -> list.get(0).score()).toList())
        .forEach(id -> nothing.put(id, List.of()));
    Map<String, SurfaceScore> alone =
        nothing.isEmpty() ? Map.of() : bench.run(lit, changed, nothing);
    Map<String, List<List<Remedy>>> recipes = new LinkedHashMap<>();
    Map<String, List<Trial>> out = new LinkedHashMap<>();
    for (Map.Entry<String, List<Trial>> e : trials.entrySet()) {
      SurfaceScore now = alone.get(e.getKey());
      Trial old = e.getValue().get(0);
      if (now == null || same(now, old.score())) {
        out.put(e.getKey(), e.getValue());
        continue;
      }
      out.put(e.getKey(), asItIs(now));
      recipes.put(
          e.getKey(),
          e.getValue().stream()
              .filter(t -> !t.changes().isEmpty() && showing(t) < showing(old) * (1 - HELPS))
              .sorted(Comparator.comparingDouble(this::showing))
              .limit(AGAIN)
              .map(Trial::changes)
              .toList());
    }
    add(out, bench.runAll(lit, changed, recipes));
    return out;
  }

  private static boolean same(SurfaceScore a, SurfaceScore b) {
    for (int level = 3; level <= 5; level++) {
      double before = Showing.at(b, level);
      if (Math.abs(Showing.at(a, level) - before) > Math.max(1e-3, HELPS * before)) {
        return false;
      }
    }
    return true;
  }

  private Menu menu(List<Remedy> changes, long price, Map<String, List<Trial>> trials) {
    List<List<Option>> surfaces = new ArrayList<>();
    trials.forEach((id, list) -> surfaces.add(options(id, list)));
    return new Menu(changes, price, surfaces);
  }

  private List<Option> options(String id, List<Trial> trials) {
    List<Option> out = new ArrayList<>();
    for (Trial t : trials) {
      if (showing(t) > showing(trials.get(0))) {
        continue; // less length above the limit is no excuse for a joint that shows more
      }
      for (int level : Baseline.levels(house, t.score())) {
        OptionalLong price = price(id, trials.get(0), t, level);
        if (price.isPresent()) {
          out.add(
              new Option(
                  id,
                  changes(id, t, level),
                  level,
                  price.getAsLong(),
                  Showing.at(t.score(), Math.max(3, level)),
                  judge.excess(t.score(), Math.max(3, level))));
        }
      }
    }
    return out;
  }

  private List<Remedy> changes(String id, Trial t, int level) {
    List<Remedy> out = new ArrayList<>(t.changes());
    if (level != Baseline.level(house, t.score())) {
      out.add(new Remedy.Finish(id, level));
    }
    return out;
  }

  private OptionalLong price(String id, Trial asItIs, Trial t, int level) {
    List<OptionalLong> parts = new ArrayList<>();
    parts.add(pricing.finish(id, Baseline.level(house, t.score()), level));
    Surface surface = house.surface(id);
    parts.add(
        pricing.boards(
            Candidates.boardArea(surface, asItIs.score()),
            Candidates.boardArea(surface, t.score())));
    if (t.changes().stream().anyMatch(r -> r instanceof Remedy.BackBlock)) {
      parts.add(pricing.backBlock(id, Candidates.buttLength(t.score())));
    }
    return parts.stream().anyMatch(OptionalLong::isEmpty)
        ? OptionalLong.empty()
        : OptionalLong.of(parts.stream().mapToLong(OptionalLong::getAsLong).sum());
  }

  private List<RemedyLine> lines(String id, List<Trial> trials) {
    List<RemedyLine> out = new ArrayList<>();
    Trial asItIs = trials.get(0);
    double limit = judge.attention(id).limit();
    double before = showing(asItIs);
    for (Trial t : trials) {
      for (int level : Baseline.levels(house, t.score())) {
        List<Remedy> changes = changes(id, t, level);
        if (!changes.isEmpty()) {
          double after = Showing.at(t.score(), Math.max(3, level));
          out.add(
              new RemedyLine(
                  id,
                  changes,
                  level,
                  before,
                  after,
                  limit,
                  judge.borne(t.score(), Math.max(3, level)),
                  price(id, asItIs, t, level)));
        }
      }
    }
    return out;
  }

  /** Lines for the surfaces that a house-wide change reaches, by itself. */
  private List<RemedyLine> wideLines(
      List<Remedy> changes, OptionalLong price, String id, List<Trial> under, HouseScore before) {
    SurfaceScore old = before.surface(id);
    Trial alone = under.get(0);
    if (alone.score().equals(old) || same(alone.score(), old)) {
      return List.of();
    }
    int level = Baseline.level(house, old);
    return List.of(
        new RemedyLine(
            id,
            changes,
            level,
            Baseline.showing(house, old),
            showing(alone),
            judge.attention(id).limit(),
            judge.borne(alone.score(), Math.max(3, level)),
            price));
  }

  private double showing(Trial t) {
    return Baseline.showing(house, t.score());
  }

  private Comparator<RemedyLine> order() {
    return Comparator.<RemedyLine>comparingInt(l -> targets.indexOf(l.surfaceId()))
        .thenComparingInt(l -> l.price().isPresent() ? 0 : 1)
        .thenComparingLong(l -> Math.max(0, l.price().orElse(0)))
        .thenComparingDouble(RemedyLine::after)
        .thenComparingInt(l -> l.changes().size());
  }
}
