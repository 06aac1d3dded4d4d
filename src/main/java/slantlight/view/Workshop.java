package slantlight.view;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import slantlight.light.LightModel;
import slantlight.light.Transport;
import slantlight.light.TransportOptions;
import slantlight.scene.House;
import slantlight.score.JointMoments;
import slantlight.sky.Weather;
import slantlight.units.Progress;

/**
 * Computes beside the drawing thread: first the light between the surfaces, then the scores, and in
 * between the light of the moment and rooms that are looked at. What is done is picked up by {@link
 * #take}.
 */
final class Workshop implements AutoCloseable {
  /** Rooms whose light is kept; a large room takes about 100 MB. */
  private static final int ROOMS = 3;

  /** Scores a house from its light; the real one is the score package's. */
  @FunctionalInterface
  interface Scoring {
    Scores.Scored score(LightModel light, Progress progress);
  }

  private record Instant(ZonedDateTime time, Weather weather) {}

  /** A moment wanted in rooms; the first sets the brightness. */
  private record Wanted(List<String> rooms, ZonedDateTime time, Weather weather) {}

  private final ExecutorService lightThread = thread("light");
  private final ExecutorService scoreThread = thread("score");
  private final AtomicReference<ViewModel> model = new AtomicReference<>();
  private final AtomicReference<JointsThen> joints = new AtomicReference<>();
  private final AtomicReference<Instant> wantedJoints = new AtomicReference<>();
  private final AtomicReference<LitMoment> moment = new AtomicReference<>();
  private final AtomicReference<Wanted> wanted = new AtomicReference<>();
  private final Map<String, RoomField> rooms = new LinkedHashMap<>();
  private final Moments moments;
  private final HouseShape shape;
  private final House house;
  private final Scoring scoring;
  private volatile LightModel light;
  private volatile Optional<JointMoments> jointMoments = Optional.empty();
  private volatile String working = "";
  private volatile String failure = "";
  private volatile boolean closed;
  private Wanted last;
  private Instant lastJoints;

  Workshop(House house, Scoring scoring) {
    this.house = house;
    this.scoring = scoring;
    moments = new Moments(house);
    shape = new HouseShape(new ViewModel(house, Optional.empty(), List.of(), j -> 0));
    run(lightThread, this::prepare);
  }

  private static ExecutorService thread(String name) {
    return Executors.newSingleThreadExecutor(
        task -> {
          Thread t = new Thread(task, name);
          t.setDaemon(true);
          return t;
        });
  }

  private void run(ExecutorService on, Runnable work) {
    on.execute(
        () -> {
          try {
            work.run();
          } catch (CancellationException e) {
            working = "";
          } catch (RuntimeException e) {
            failure = "Computing failed: " + e.getMessage();
            working = "";
          }
        });
  }

  private void prepare() {
    light = Transport.of(house, TransportOptions.DEFAULT, this::progress);
    run(scoreThread, this::score);
  }

  private void score() {
    Scores.Scored scored = scoring.score(light, this::progress);
    jointMoments = scored.moments();
    model.set(scored.model());
    working = "";
  }

  private void progress(String stage, double share) {
    if (closed) {
      throw new CancellationException();
    }
    working = stage + ", " + Math.round(100 * share) + " %";
  }

  /** Asks for the light of a moment in some rooms; only the newest wish is worked on. */
  void want(List<String> roomIds, ZonedDateTime time, Weather weather) {
    Wanted next = new Wanted(roomIds, time, weather);
    if (next.equals(last)) {
      return;
    }
    last = next;
    if (wanted.getAndSet(next) == null) {
      run(lightThread, this::lightWanted);
    }
  }

  /** Asks for every joint's showing at a moment; only the newest wish is worked on. */
  void wantJoints(ZonedDateTime time, Weather weather) {
    Instant next = new Instant(time, weather);
    if (jointMoments.isEmpty() || next.equals(lastJoints)) {
      return;
    }
    lastJoints = next;
    if (wantedJoints.getAndSet(next) == null) {
      run(scoreThread, this::jointsWanted);
    }
  }

  private void jointsWanted() {
    Instant now = wantedJoints.getAndSet(null);
    if (now != null) {
      jointMoments.ifPresent(m -> joints.set(JointsThen.of(m, now.time(), now.weather())));
    }
  }

  private void lightWanted() {
    Wanted now = wanted.getAndSet(null);
    if (now != null && light != null) {
      for (String id : now.rooms()) {
        prepare(id);
      }
      moment.set(
          LitMoment.of(
              light,
              new ArrayList<>(rooms.values()),
              moments.at(now.time(), now.weather()),
              Optional.of(now.rooms().get(0))));
    }
  }

  /** Makes a room's light ready and the youngest of those kept. */
  private void prepare(String roomId) {
    RoomField field = rooms.remove(roomId);
    if (field == null) {
      if (rooms.size() >= ROOMS) {
        rooms.remove(rooms.keySet().iterator().next());
      }
      field = new RoomField(light, shape, roomId, this::progress);
      working = "";
    }
    rooms.put(roomId, field);
  }

  /** Hands over what was finished since the last call. */
  void take(
      Consumer<ViewModel> newModel, Consumer<LitMoment> newMoment, Consumer<JointsThen> newJoints) {
    Optional.ofNullable(model.getAndSet(null)).ifPresent(newModel);
    Optional.ofNullable(moment.getAndSet(null)).ifPresent(newMoment);
    Optional.ofNullable(joints.getAndSet(null)).ifPresent(newJoints);
  }

  /** What is being computed, for the user; empty when nothing is. */
  String working() {
    return working;
  }

  /** What went wrong, for the user; empty when nothing did. */
  String failure() {
    return failure;
  }

  @Override
  public void close() {
    closed = true;
    lightThread.shutdownNow();
    scoreThread.shutdownNow();
  }
}
