package stackside.publish;

import java.lang.reflect.Proxy;
import java.util.concurrent.TimeUnit;

/** A disk that stops between the two renames of a swap, says so, and waits to be killed. */
public final class PausingDisk {
  /** What it says, to the process that started it. */
  public static final char HERE = '!';

  private PausingDisk() {}

  public static Disk local() {
    Disk disk = new LocalDisk();
    return (Disk)
        Proxy.newProxyInstance(
            Disk.class.getClassLoader(),
            new Class<?>[] {Disk.class},
            (proxy, operation, given) -> {
              Object done = operation.invoke(disk, given);
              if (operation.getName().equals("move")
                  && given[1].toString().endsWith(".stackside-previous")) {
                System.out.write(HERE);
                System.out.flush();
                TimeUnit.MINUTES.sleep(1);
              }
              return done;
            });
  }
}
