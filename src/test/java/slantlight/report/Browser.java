package slantlight.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A real headless Chromium, driven over the DevTools protocol. */
final class Browser implements AutoCloseable {
  private static final Pattern ENDPOINT = Pattern.compile("DevTools listening on (ws://\\S+)");
  private static final int PATIENCE_SECONDS = 120;
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Process process;
  private final WebSocket socket;
  private final AtomicInteger id = new AtomicInteger();
  private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
  private final BlockingQueue<JsonNode> events = new LinkedBlockingQueue<>();
  private final List<String> complaints = new ArrayList<>();
  private String session = "";

  private Browser(Process process, String endpoint) throws Exception {
    this.process = process;
    this.socket =
        HttpClient.newHttpClient()
            .newWebSocketBuilder()
            .buildAsync(URI.create(endpoint), new Listener())
            .get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    JsonNode target = call("Target.createTarget", Map.of("url", "about:blank"));
    JsonNode attached =
        call(
            "Target.attachToTarget",
            Map.of("targetId", target.get("targetId").asText(), "flatten", true));
    session = attached.get("sessionId").asText();
    for (String domain : List.of("Page", "Runtime", "Log", "Network")) {
      call(domain + ".enable", Map.of());
    }
  }

  /** The Chromium of this machine, if it has one. */
  static Optional<Path> installed() {
    return Stream.of("chromium", "chromium-browser", "google-chrome")
        .flatMap(
            name ->
                Stream.of(System.getenv("PATH").split(":", -1)).map(d -> Path.of(d).resolve(name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  static Browser start(Path program, Path profile) throws Exception {
    Process process =
        new ProcessBuilder(
                program.toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--hide-scrollbars",
                "--disable-dev-shm-usage",
                "--remote-debugging-port=0",
                "--user-data-dir=" + profile,
                "about:blank")
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    BufferedReader err =
        new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8));
    for (String line = err.readLine(); line != null; line = err.readLine()) {
      Matcher m = ENDPOINT.matcher(line);
      if (m.find()) {
        Thread drain = new Thread(() -> err.lines().forEach(l -> {}), "browser-messages");
        drain.setDaemon(true);
        drain.start();
        return new Browser(process, m.group(1));
      }
    }
    throw new IOException("the browser did not start");
  }

  /** Loads a page at a width and waits until it is complete. */
  void open(URI page, int width, int height) throws Exception {
    size(width, height);
    events.clear();
    call("Page.navigate", Map.of("url", page.toString()));
    for (JsonNode e = next(); !e.path("method").asText().equals("Page.loadEventFired"); ) {
      e = next();
    }
  }

  void size(int width, int height) throws Exception {
    call(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  void media(String feature, String value) throws Exception {
    call(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", feature, "value", value))));
  }

  /** Styles the page as for paper, or for the screen again. */
  void print(boolean paper) throws Exception {
    call("Emulation.setEmulatedMedia", Map.of("media", paper ? "print" : "screen"));
  }

  void script(boolean allowed) throws Exception {
    call("Emulation.setScriptExecutionDisabled", Map.of("value", !allowed));
  }

  /** The value of an expression in the page. */
  JsonNode evaluate(String expression) throws Exception {
    JsonNode answer =
        call("Runtime.evaluate", Map.of("expression", expression, "returnByValue", true));
    if (answer.has("exceptionDetails")) {
      throw new IllegalStateException(answer.get("exceptionDetails").toString());
    }
    return answer.path("result").path("value");
  }

  void press(String key) throws Exception {
    call("Input.dispatchKeyEvent", Map.of("type", "keyDown", "key", key, "code", key));
    call("Input.dispatchKeyEvent", Map.of("type", "keyUp", "key", key, "code", key));
  }

  /** Errors, warnings and exceptions of the console so far. */
  List<String> complaints() {
    return List.copyOf(complaints);
  }

  private JsonNode next() throws InterruptedException, IOException {
    JsonNode e = events.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
    if (e == null) {
      throw new IOException("the browser says nothing");
    }
    return e;
  }

  private JsonNode call(String method, Map<String, Object> parameters) throws Exception {
    int number = id.incrementAndGet();
    CompletableFuture<JsonNode> answer = new CompletableFuture<>();
    waiting.put(number, answer);
    ObjectNode message = MAPPER.createObjectNode();
    message.put("id", number).put("method", method);
    message.set("params", MAPPER.valueToTree(parameters));
    if (!session.isEmpty()) {
      message.put("sessionId", session);
    }
    socket.sendText(message.toString(), true).get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    return answer.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
  }

  @Override
  public void close() {
    socket.abort();
    process.destroy();
    process.onExit().orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS).join();
  }

  private final class Listener implements WebSocket.Listener {
    private final StringBuilder text = new StringBuilder();

    @Override
    public CompletionStage<?> onText(WebSocket web, CharSequence part, boolean last) {
      text.append(part);
      if (last) {
        take(text.toString());
        text.setLength(0);
      }
      web.request(1);
      return null;
    }

    private void take(String message) {
      JsonNode node;
      try {
        node = MAPPER.readTree(message);
      } catch (IOException e) {
        throw new IllegalStateException(e);
      }
      if (node.has("id")) {
        CompletableFuture<JsonNode> answer = waiting.remove(node.get("id").asInt());
        if (node.has("error")) {
          answer.completeExceptionally(new IllegalStateException(node.get("error").toString()));
        } else {
          answer.complete(node.path("result"));
        }
        return;
      }
      switch (node.path("method").asText()) {
        case "Runtime.exceptionThrown", "Log.entryAdded", "Runtime.consoleAPICalled" ->
            complaints.add(node.path("params").toString());
        default -> events.add(node);
      }
    }
  }
}
