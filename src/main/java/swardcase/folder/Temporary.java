package swardcase.folder;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A file on its way to its place, under a name that no other run has: {@code
 * .swardcase-PROCESS-NUMBER.part}. It is made anew, never opened where something stands, and locked
 * for as long as its run works on it, so that another run can tell one that a crash left behind.
 */
final class Temporary implements AutoCloseable {

  private static final String START = ".swardcase-";
  private static final String END = ".part";
  private static final Pattern NAME =
      Pattern.compile(Pattern.quote(START) + "([0-9]{1,18})-[0-9]+" + Pattern.quote(END));

  private final Path path;
  private final FileChannel channel;
  private boolean moved;

  private Temporary(Path path, FileChannel channel) {
    this.path = path;
    this.channel = channel;
  }

  /** A new file in a folder. */
  static Temporary in(Path folder) throws IOException {
    String start = START + ProcessHandle.current().pid() + "-";
    for (int number = 1; ; number++) {
      Path path = folder.resolve(start + number + END);
      try {
        FileChannel channel =
            FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        lock(channel);
        return new Temporary(path, channel);
      } catch (FileAlreadyExistsException taken) {
        // The next number is tried.
      }
    }
  }

  /** Whether nobody else has the file locked; a disk without locks says no. */
  private static boolean lock(FileChannel channel) {
    try {
      return channel.tryLock() != null;
    } catch (IOException | OverlappingFileLockException none) {
      return false;
    }
  }

  /** Writes the content and waits until the disk has it. */
  void write(WholeFiles.Content content) throws IOException {
    OutputStream to =
        new BufferedOutputStream(Channels.newOutputStream(channel)) {
          @Override
          public void close() throws IOException {
            flush();
          }
        };
    content.write(to);
    to.flush();
    channel.force(true);
  }

  /** Takes a place in one step, whatever stands there. */
  void moveTo(Path target) throws IOException {
    channel.close();
    Files.move(path, target, StandardCopyOption.ATOMIC_MOVE);
    moved = true;
  }

  /** Removes the file if it was not moved. */
  @Override
  public void close() {
    try {
      channel.close();
      if (!moved) {
        Files.deleteIfExists(path);
      }
    } catch (IOException ignored) {
      // What could not be cleaned up must not hide why the writing failed.
    }
  }

  /** Waits until the disk has the names of a folder, where the system can. */
  static void keepMoves(Path folder) {
    try (FileChannel names = FileChannel.open(folder, StandardOpenOption.READ)) {
      names.force(true);
    } catch (IOException ignored) {
      // Some systems open no folders; the files are whole all the same.
    }
  }

  /** Removes what runs that are over left in a folder. */
  static void removeDead(Path folder) {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, START + "*" + END)) {
      for (Path path : left) {
        if (isDead(path)) {
          Files.deleteIfExists(path);
        }
      }
    } catch (IOException ignored) {
      // What cannot be removed is in nobody's way.
    }
  }

  /** Whether a file is one of ours, its run is over here, and nobody elsewhere has it locked. */
  private static boolean isDead(Path path) throws IOException {
    Matcher name = NAME.matcher(path.getFileName().toString());
    if (!name.matches() || !Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    Instant changed = Files.getLastModifiedTime(path, LinkOption.NOFOLLOW_LINKS).toInstant();
    if (runs(Long.parseLong(name.group(1)), changed)) {
      return false;
    }
    try (FileChannel file =
        FileChannel.open(path, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
      return lock(file);
    }
  }

  /** Whether the process of this number runs and ran then; a number may be given again. */
  private static boolean runs(long process, Instant then) {
    return ProcessHandle.of(process)
        .filter(ProcessHandle::isAlive)
        .filter(one -> one.info().startInstant().map(start -> !start.isAfter(then)).orElse(true))
        .isPresent();
  }
}
