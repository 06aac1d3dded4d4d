package slantlight.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkersTest {
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 1000})
  void everyNumberIsDoneOnce(int count) {
    AtomicIntegerArray times = new AtomicIntegerArray(count);
    Workers.each(count, times::incrementAndGet);
    for (int i = 0; i < count; i++) {
      assertThat(times.get(i)).isEqualTo(1);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 8})
  void soItIsInAPoolAndWithinOther(int threads) throws Exception {
    AtomicIntegerArray times = new AtomicIntegerArray(400);
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      pool.submit(
              () -> Workers.each(20, i -> Workers.each(20, k -> times.incrementAndGet(20 * i + k))))
          .get();
    } finally {
      pool.shutdownNow();
    }
    for (int i = 0; i < times.length(); i++) {
      assertThat(times.get(i)).isEqualTo(1);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 500})
  void afterAFaultNothingMoreBegins(int at) {
    AtomicInteger begun = new AtomicInteger();
    assertThatThrownBy(
            () ->
                Workers.each(
                    1_000_000,
                    i -> {
                      begun.incrementAndGet();
                      if (i == at) {
                        throw new IllegalStateException("stop");
                      }
                    }))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("stop");
    assertThat(begun.get()).isLessThan(1_000_000);
  }
}
