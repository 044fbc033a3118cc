package org.counterpull.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Turns Ctrl-C into a wish to stop: the search ends with the best so far, which is still written
 * before the program goes.
 */
final class Interruption implements AutoCloseable {
  private static final long LONGEST_S = 60;

  private final CountDownLatch written = new CountDownLatch(1);
  private final Thread hook = new Thread(this::interrupted);
  private volatile boolean asked;

  Interruption() {
    Runtime.getRuntime().addShutdownHook(hook);
  }

  boolean asked() {
    return asked;
  }

  private void interrupted() {
    asked = true;
    try {
      written.await(LONGEST_S, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    written.countDown();
    if (!asked) {
      Runtime.getRuntime().removeShutdownHook(hook);
    }
  }
}
