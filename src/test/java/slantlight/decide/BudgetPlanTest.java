package slantlight.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BudgetPlanTest {
  private static final double LIMIT = 2.5;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void everyBudgetGivesTheOptimumOfExhaustiveSearch(long seed) {
    Random random = new Random(seed);
    List<Menu> menus = List.of(menu(random, 0), menu(random, 7), menu(random, 25));
    List<Plan> every = everyPlan(menus);
    BudgetPlan solved = BudgetPlan.of(menus);
    for (long budget = -20; budget <= 160; budget += 3) {
      double best = Double.POSITIVE_INFINITY;
      for (Plan p : every) {
        if (p.price() <= budget) {
          best = Math.min(best, p.excess());
        }
      }
      Optional<Plan> ours = solved.within(budget);
      assertThat(ours.isPresent()).isEqualTo(best < Double.POSITIVE_INFINITY);
      if (ours.isPresent()) {
        assertThat(ours.get().excess()).isCloseTo(best, within(1e-12));
        assertThat(ours.get().price()).isLessThanOrEqualTo(budget);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void theReverseProblemGivesTheOptimumOfExhaustiveSearch(long seed) {
    Random random = new Random(seed);
    List<Menu> menus = List.of(menu(random, 0), menu(random, 9));
    long fewest = Long.MAX_VALUE;
    long cheapest = Long.MAX_VALUE;
    for (Plan p : everyPlan(menus)) {
      long above = p.options().stream().filter(o -> o.peak() > LIMIT).count();
      if (above < fewest) {
        fewest = above;
        cheapest = Long.MAX_VALUE;
      }
      if (above == fewest && above == 0) {
        cheapest = Math.min(cheapest, p.price());
      }
    }
    Plan ours = BudgetPlan.of(menus).cheapest(o -> o.peak() <= LIMIT);
    assertThat(ours.options().stream().filter(o -> o.peak() > LIMIT).count()).isEqualTo(fewest);
    if (fewest == 0) {
      assertThat(ours.price()).isEqualTo(cheapest);
    }
  }

  @Test
  void moreMoneyNeverGivesAWorsePlan() {
    Random random = new Random(42);
    List<List<Option>> surfaces = new ArrayList<>();
    for (int s = 0; s < 25; s++) {
      surfaces.add(options(random, "s" + s, 6));
    }
    List<Plan> frontier = BudgetPlan.of(List.of(new Menu(List.of(), 0, surfaces))).frontier();
    assertThat(frontier).hasSizeGreaterThan(50);
    for (int i = 1; i < frontier.size(); i++) {
      assertThat(frontier.get(i).price()).isGreaterThan(frontier.get(i - 1).price());
      assertThat(frontier.get(i).excess()).isLessThan(frontier.get(i - 1).excess());
    }
  }

  @Test
  void freeRemediesComeFirstByThemselves() {
    Remedy turn = new Remedy.BackBlock("a");
    List<Option> options =
        List.of(
            new Option("a", List.of(), 4, 0, 4, 6),
            new Option("a", List.of(turn), 4, 0, 3, 2),
            new Option("a", List.of(new Remedy.Finish("a", 5)), 5, 100, 1, 0));
    BudgetPlan solved = BudgetPlan.of(List.of(new Menu(List.of(), 0, List.of(options))));
    assertThat(solved.within(0).orElseThrow().options().get(0).changes()).containsExactly(turn);
    assertThat(solved.frontier()).hasSize(2);
  }

  private static Menu menu(Random random, long price) {
    List<List<Option>> surfaces = new ArrayList<>();
    for (int s = 0; s < 4; s++) {
      surfaces.add(options(random, "s" + s, 4));
    }
    return new Menu(List.of(), price, surfaces);
  }

  private static List<Option> options(Random random, String id, int count) {
    List<Option> out = new ArrayList<>();
    out.add(new Option(id, List.of(), 4, 0, 2 + 6 * random.nextDouble(), 20 * random.nextDouble()));
    for (int i = 1; i < count; i++) {
      out.add(
          new Option(
              id,
              List.of(new Remedy.BackBlock(id)),
              4,
              random.nextInt(50) - 5,
              1 + 6 * random.nextDouble(),
              20 * random.nextDouble()));
    }
    return out;
  }

  private static List<Plan> everyPlan(List<Menu> menus) {
    List<Plan> out = new ArrayList<>();
    for (Menu menu : menus) {
      List<List<Option>> partial = List.of(List.of());
      for (List<Option> surface : menu.surfaces()) {
        List<List<Option>> next = new ArrayList<>();
        for (List<Option> p : partial) {
          for (Option o : surface) {
            List<Option> longer = new ArrayList<>(p);
            longer.add(o);
            next.add(longer);
          }
        }
        partial = next;
      }
      for (List<Option> options : partial) {
        long price = menu.price() + options.stream().mapToLong(Option::price).sum();
        double excess = 0;
        for (Option o : options) {
          excess += o.excess();
        }
        out.add(new Plan(menu.changes(), options, price, excess));
      }
    }
    return out;
  }
}
