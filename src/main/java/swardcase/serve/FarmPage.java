package swardcase.serve;

import java.io.IOException;
import java.time.Duration;

/** The page of a farm, open until it is stopped. */
public final class FarmPage implements AutoCloseable {

  private final Desk desk;
  private final LocalServer server;

  /**
   * Opens it.
   *
   * @param port 0 for any that is free
   * @throws IOException if the port is taken
   */
  public FarmPage(Setup setup, int port) throws IOException {
    desk = new Desk(setup, this::stop);
    server = new LocalServer(port, desk);
  }

  /** The address for the browser; it holds the key. */
  public String address() {
    return server.address();
  }

  /** Waits until the page is stopped, or nobody has asked for anything for so long. */
  public void await(Duration idle) throws InterruptedException {
    server.await(idle);
  }

  private void stop() {
    server.stop();
  }

  @Override
  public void close() {
    server.close();
    desk.close();
  }
}
