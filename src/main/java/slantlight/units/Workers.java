package slantlight.units;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/** Many pieces of work shared out among the threads of a pool. */
public final class Workers {
  private Workers() {}

  /**
   * Does something for every number below a count. A free thread takes the next number, so that
   * none idles while another still has a long stretch of costly ones before it, as happens to a
   * parallel stream, which shares out whole stretches beforehand.
   *
   * <p>The threads are those of the pool that the caller works in, else the common ones and the
   * caller's own.
   *
   * @param work for one number; may run on any thread, and must not depend on the order
   * @throws RuntimeException the first that {@code work} throws; what has not begun then does not
   */
  public static void each(int count, IntConsumer work) {
    AtomicInteger next = new AtomicInteger();
    IntStream.range(0, Math.min(count, threads()))
        .parallel()
        .forEach(
            thread -> {
              for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
                try {
                  work.accept(i);
                } catch (RuntimeException | Error e) {
                  next.set(count);
                  throw e;
                }
              }
            });
  }

  private static int threads() {
    ForkJoinPool pool = ForkJoinTask.getPool();
    return pool == null ? ForkJoinPool.getCommonPoolParallelism() + 1 : pool.getParallelism();
  }
}
