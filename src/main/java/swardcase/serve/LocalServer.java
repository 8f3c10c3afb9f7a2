package swardcase.serve;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;

/**
 * The page of a farm, on a server that this machine alone can reach, for one browser that has the
 * key. It stops when told to, and when nobody has asked for anything for a while.
 */
public final class LocalServer implements AutoCloseable {

  /** Largest question, in bytes. */
  static final int MOST_BYTES = 1 << 20;

  /** Of a larger one so much is read, so that the refusal is seen; then the line is cut. */
  private static final int MOST_READ = 64 * MOST_BYTES;

  private static final int THREADS = 8;
  private static final JsonMapper JSON = new JsonMapper();

  static {
    // Without the first a second request waits 40 ms; without the second half a header stays open.
    System.setProperty("sun.net.httpserver.nodelay", "true");
    System.setProperty("sun.net.httpserver.maxReqTime", "10");
  }

  private final HttpServer server;
  private final Guard guard;
  private final Site site;
  private final ExecutorService threads =
      Executors.newFixedThreadPool(THREADS, LocalServer::daemon);
  private final CountDownLatch stopped = new CountDownLatch(1);
  private final AtomicLong lastAsked = new AtomicLong(System.nanoTime());

  /**
   * Opens the page of a farm.
   *
   * @param port 0 for any that is free
   * @throws IOException if the port is taken
   */
  public LocalServer(Setup setup, int port) throws IOException {
    this(port, stop -> new Desk(setup, stop));
  }

  /** Starts a server for what is behind it, which is given a way to stop it. */
  LocalServer(int port, Function<Runnable, Site> behind) throws IOException {
    site = behind.apply(this::stop);
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
    guard = new Guard(server.getAddress().getPort());
    server.createContext("/", this::answer);
    server.setExecutor(threads);
    server.start();
  }

  static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "page");
    thread.setDaemon(true);
    return thread;
  }

  /** The address for the browser; it holds the key. */
  public String address() {
    return guard.address();
  }

  /** Whether it listens to this machine alone. */
  boolean isLocal() {
    return server.getAddress().getAddress().isLoopbackAddress();
  }

  /** Waits until it is stopped, or until nobody has asked for anything for so long. */
  public void await(Duration idle) throws InterruptedException {
    long left = idle.toNanos();
    while (left > 0 && !stopped.await(left, TimeUnit.NANOSECONDS)) {
      left = idle.toNanos() - (System.nanoTime() - lastAsked.get());
    }
    server.stop(1); // the last answers are on their way
    close();
  }

  /** Lets whoever waits go on; answers under way are still given. */
  void stop() {
    stopped.countDown();
  }

  @Override
  public void close() {
    stop();
    server.stop(0);
    threads.shutdownNow();
    site.close();
  }

  /** Whatever goes wrong is told: an exception that leaves here would only cut the line. */
  private void answer(HttpExchange exchange) throws IOException {
    lastAsked.set(System.nanoTime());
    try (exchange) {
      Optional<Reply> guards = guard.reply(exchange);
      if (guards.isPresent()) {
        drain(exchange);
      }
      send(exchange, guards.isPresent() ? guards.get() : reply(exchange));
    }
  }

  private Reply reply(HttpExchange exchange) {
    String name = exchange.getRequestURI().getPath();
    try {
      if (exchange.getRequestMethod().equals("GET")) {
        return site.get(name);
      }
      byte[] body = exchange.getRequestBody().readNBytes(MOST_BYTES + 1);
      if (body.length > MOST_BYTES) {
        drain(exchange);
        return Reply.text(413, "A question must not be longer than a megabyte.");
      }
      JsonNode asked = JSON.readTree(body);
      return asked.isObject()
          ? site.post(name, asked)
          : Reply.text(400, "A question must be a JSON object.");
    } catch (JsonProcessingException notJson) {
      return Reply.text(400, "A question must be JSON.");
    } catch (Exception | StackOverflowError | OutOfMemoryError fault) {
      return Reply.text(
          500, "Swardcase has a fault of its own: " + fault + ". Please report it with the farm.");
    }
  }

  /** Reads what is left of a question; else its sender would never see the refusal. */
  private static void drain(HttpExchange exchange) throws IOException {
    InputStream body = exchange.getRequestBody();
    byte[] some = new byte[1 << 16];
    int all = 0;
    for (int read = body.read(some); read >= 0 && all < MOST_READ; read = body.read(some)) {
      all += read;
    }
  }

  private static void send(HttpExchange exchange, Reply reply) throws IOException {
    Guard.PROTECTION.forEach(exchange.getResponseHeaders()::set);
    reply.headers().forEach(exchange.getResponseHeaders()::set);
    boolean bodiless = exchange.getRequestMethod().equals("HEAD") || reply.body().length == 0;
    exchange.sendResponseHeaders(reply.status(), bodiless ? -1 : reply.body().length);
    if (!bodiless) {
      exchange.getResponseBody().write(reply.body());
    }
  }
}
