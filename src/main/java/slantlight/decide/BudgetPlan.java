package slantlight.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Which remedies to buy: the exact multiple-choice knapsack over the surfaces of a house.
 *
 * <p>One option is taken per surface, under one {@link Menu} of house-wide changes; the sum of the
 * prices is the price of the plan, the sum of the excesses what it leaves. The frontier holds every
 * plan that no other plan beats in price and excess at once. It is found surface by surface: the
 * partial plans that are beaten by a cheaper and better partial plan are dropped, which loses
 * nothing because both sums only grow by the same later terms (Nemhauser and Ullmann, "Discrete
 * dynamic programming and capital allocation", Management Science 15, 1969). The frontiers of the
 * menus are then merged. Prices are whole units, so a frontier has at most as many plans as there
 * are units between the cheapest and the dearest plan.
 */
public final class BudgetPlan {
  private final List<Menu> menus;
  private final List<Plan> frontier;

  private BudgetPlan(List<Menu> menus, List<Plan> frontier) {
    this.menus = menus;
    this.frontier = frontier;
  }

  /**
   * Solves for every budget at once.
   *
   * @param menus at least one; the first is the house as it is
   */
  public static BudgetPlan of(List<Menu> menus) {
    List<Plan> all = new ArrayList<>();
    for (Menu menu : menus) {
      all.addAll(frontier(menu));
    }
    return new BudgetPlan(List.copyOf(menus), undominated(all));
  }

  /** Every plan worth having, cheapest first; each next one costs more and leaves less. */
  public List<Plan> frontier() {
    return frontier;
  }

  /** The best plan within a budget; empty when even the cheapest costs more. */
  public Optional<Plan> within(long budget) {
    Plan best = null;
    for (Plan p : frontier) {
      if (p.price() <= budget) {
        best = p;
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * The cheapest plan in which every surface's option is good enough; a surface that has no such
   * option gets the one that shows least and counts as unsolved. Among menus, fewer surfaces left
   * unsolved come before a lower price.
   *
   * @param enough whether an option is good enough, such as {@link Option#solves}
   */
  public Plan cheapest(Predicate<Option> enough) {
    Comparator<Option> best =
        Comparator.<Option>comparingInt(o -> enough.test(o) ? 0 : 1)
            .thenComparingDouble(o -> enough.test(o) ? o.price() : o.peak())
            .thenComparingLong(Option::price)
            .thenComparingInt(o -> o.changes().size())
            .thenComparingDouble(Option::peak);
    List<Plan> plans = new ArrayList<>();
    for (Menu menu : menus) {
      plans.add(plan(menu, menu.surfaces().stream().map(s -> s.stream().min(best).get()).toList()));
    }
    return plans.stream()
        .min(
            Comparator.<Plan>comparingLong(
                    p -> p.options().stream().filter(o -> !enough.test(o)).count())
                .thenComparingLong(Plan::price)
                .thenComparingInt(p -> p.allChanges().size()))
        .orElseThrow();
  }

  private static Plan plan(Menu menu, List<Option> options) {
    long price = menu.price();
    double excess = 0;
    for (Option o : options) {
      price += o.price();
      excess += o.excess();
    }
    return new Plan(menu.changes(), options, price, excess);
  }

  /** The undominated plans of one menu. */
  private static List<Plan> frontier(Menu menu) {
    int surfaces = menu.surfaces().size();
    List<Stage> stages = new ArrayList<>();
    stages.add(Stage.start());
    for (List<Option> options : menu.surfaces()) {
      stages.add(stages.get(stages.size() - 1).next(worthwhile(options)));
    }
    List<Plan> out = new ArrayList<>();
    Stage last = stages.get(surfaces);
    for (int end = 0; end < last.size(); end++) {
      Option[] chosen = new Option[surfaces];
      int at = end;
      for (int i = surfaces; i > 0; i--) {
        chosen[i - 1] = stages.get(i).chosen(at);
        at = stages.get(i).parent[at];
      }
      out.add(plan(menu, Arrays.asList(chosen)));
    }
    return out;
  }

  /** The options of a surface that no other option of it beats, cheapest first. */
  private static List<Option> worthwhile(List<Option> options) {
    List<Option> sorted = new ArrayList<>(options);
    sorted.sort(
        Comparator.comparingLong(Option::price)
            .thenComparingDouble(Option::excess)
            .thenComparingInt(o -> o.changes().size()));
    List<Option> out = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    for (Option o : sorted) {
      if (o.excess() < least) {
        out.add(o);
        least = o.excess();
      }
    }
    return out;
  }

  private static List<Plan> undominated(List<Plan> plans) {
    List<Plan> sorted = new ArrayList<>(plans);
    sorted.sort(
        Comparator.comparingLong(Plan::price)
            .thenComparingDouble(Plan::excess)
            .thenComparingInt(p -> p.allChanges().size()));
    List<Plan> out = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    for (Plan p : sorted) {
      if (p.excess() < least) {
        out.add(p);
        least = p.excess();
      }
    }
    return List.copyOf(out);
  }

  /** The undominated partial plans over the first surfaces, cheapest first, as columns. */
  private static final class Stage {
    private final List<Option> options;
    private final long[] price;
    private final double[] excess;
    private final int[] parent;
    private final int[] choice;

    private Stage(List<Option> options, long[] price, double[] excess, int[] parent, int[] choice) {
      this.options = options;
      this.price = price;
      this.excess = excess;
      this.parent = parent;
      this.choice = choice;
    }

    static Stage start() {
      return new Stage(List.of(), new long[1], new double[1], new int[1], new int[1]);
    }

    int size() {
      return price.length;
    }

    Option chosen(int at) {
      return options.get(choice[at]);
    }

    /**
     * Merges one sorted copy of this stage per option, always taking the cheapest head and, among
     * equals, the better and then the earlier one.
     */
    Stage next(List<Option> more) {
      int n = size();
      int[] head = new int[more.size()];
      Columns out = new Columns(n * more.size());
      double least = Double.POSITIVE_INFINITY;
      while (true) {
        int best = -1;
        long bestPrice = 0;
        double bestExcess = 0;
        for (int c = 0; c < head.length; c++) {
          if (head[c] == n) {
            continue;
          }
          long p = price[head[c]] + more.get(c).price();
          double e = excess[head[c]] + more.get(c).excess();
          if (best < 0 || p < bestPrice || (p == bestPrice && e < bestExcess)) {
            best = c;
            bestPrice = p;
            bestExcess = e;
          }
        }
        if (best < 0) {
          return out.stage(more);
        }
        if (bestExcess < least) {
          out.add(bestPrice, bestExcess, head[best], best);
          least = bestExcess;
        }
        head[best]++;
      }
    }
  }

  private static final class Columns {
    private final long[] price;
    private final double[] excess;
    private final int[] parent;
    private final int[] choice;
    private int size;

    Columns(int capacity) {
      price = new long[capacity];
      excess = new double[capacity];
      parent = new int[capacity];
      choice = new int[capacity];
    }

    void add(long p, double e, int from, int option) {
      price[size] = p;
      excess[size] = e;
      parent[size] = from;
      choice[size] = option;
      size++;
    }

    Stage stage(List<Option> options) {
      return new Stage(
          options,
          Arrays.copyOf(price, size),
          Arrays.copyOf(excess, size),
          Arrays.copyOf(parent, size),
          Arrays.copyOf(choice, size));
    }
  }
}
