package stackside.render.site;

import freemarker.core.Environment;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One page being filled, on a thread of its own: what its template does without end is stopped, and
 * what cannot be stopped is left behind.
 *
 * <p>FreeMarker asks at each turn of a loop and at each call of a macro whether its thread was
 * interrupted. The answer is yes where a template went too far.
 */
final class Filling extends Thread {
  /** No page needs as many turns and calls by far. */
  private static final int MOST_STEPS = 20_000_000;

  /** No page needs as many letters by far. */
  private static final int LONGEST_PAGE = 20_000_000;

  /** Frames of Java on the stack, of which a call in a template takes about ten. */
  private static final int DEEPEST = 2_000;

  private static final int STEPS_BETWEEN_LOOKS = 64;
  private static final long STACK_BYTES = 8L << 20;
  private static final long PATIENCE_MILLISECONDS = 20_000;
  private static final long FOR_EVER = 0;

  private final Configuration configuration;
  private final Page page;
  private final Set<String> own;
  private final StringWriter out = new Limited();
  private volatile @Nullable Environment environment;
  private volatile @Nullable Throwable failure;
  private volatile @Nullable BrokenTemplate stopped;
  private volatile boolean tooLong;
  private int steps;

  /**
   * @param own the names of the templates that are the unit's own
   */
  Filling(Configuration configuration, Page page, Set<String> own) {
    super(null, null, "filling " + page.frame().path(), STACK_BYTES);
    this.configuration = configuration;
    this.page = page;
    this.own = Set.copyOf(own);
    setDaemon(true);
  }

  /** The filled page. */
  String done() {
    start();
    try {
      join(own.isEmpty() ? FOR_EVER : PATIENCE_MILLISECONDS);
    } catch (InterruptedException e) {
      tooLong = true;
      Thread.currentThread().interrupt();
      throw new IllegalStateException("somebody interrupted the filling of a page", e);
    }
    if (isAlive()) {
      tooLong = true;
      throw endless("it does not come to an end");
    }
    BrokenTemplate end = stopped;
    if (end != null) {
      throw end;
    }
    Throwable cause = failure;
    if (cause == null) {
      return out.toString();
    }
    throw own.isEmpty()
        ? new IllegalStateException(
            "cannot fill " + page.template() + " for " + page.frame().path(), cause)
        : BrokenTemplate.because(page, cause, own);
  }

  @Override
  public void run() {
    try {
      Environment filled =
          configuration.getTemplate(page.template()).createProcessingEnvironment(page, out);
      environment = filled;
      filled.process();
    } catch (StackOverflowError e) {
      stopped = endless("it calls itself without end");
    } catch (OutOfMemoryError e) {
      stopped = endless("it takes more memory than there is");
    } catch (TemplateException | IOException | RuntimeException e) {
      failure = e;
    }
  }

  /** Asked by FreeMarker at each step; see the comment of this class. */
  @Override
  public boolean isInterrupted() {
    return Thread.currentThread() == this ? goesTooFar() : super.isInterrupted();
  }

  private boolean goesTooFar() {
    steps++;
    if (steps > MOST_STEPS || tooLong) {
      stopped = endless("it does not come to an end");
    } else if (steps % STEPS_BETWEEN_LOOKS == 0 && isDeep()) {
      stopped = endless("it calls itself without end");
    }
    return stopped != null;
  }

  private void stopWhereItGoesTooFar() {
    if (goesTooFar()) {
      throw new IllegalStateException("the page went too far");
    }
  }

  private static boolean isDeep() {
    return StackWalker.getInstance().walk(frames -> frames.skip(DEEPEST).findFirst().isPresent());
  }

  private BrokenTemplate endless(String words) {
    return BrokenTemplate.endless(page, words, whereItStands(), own);
  }

  private String whereItStands() {
    Environment filled = environment;
    Beginning steps = new Beginning();
    if (filled != null) {
      try {
        filled.outputInstructionStack(new PrintWriter(steps));
      } catch (IllegalStateException e) {
        return steps.toString();
      }
    }
    return steps.toString();
  }

  /** Takes the innermost steps; of a template that calls itself there are any number. */
  private static final class Beginning extends StringWriter {
    private static final int ENOUGH = 20_000;

    @Override
    public void write(String words, int from, int length) {
      super.write(words, from, length);
      if (getBuffer().length() > ENOUGH) {
        throw new IllegalStateException("the innermost steps are known");
      }
    }
  }

  /** Takes as much as any page needs. */
  private final class Limited extends StringWriter {
    @Override
    public void write(int letter) {
      super.write(letter);
      look();
    }

    @Override
    public void write(char[] letters, int from, int length) {
      super.write(letters, from, length);
      look();
    }

    @Override
    public void write(String words) {
      super.write(words);
      look();
    }

    @Override
    public void write(String words, int from, int length) {
      super.write(words, from, length);
      look();
    }

    private void look() {
      if (getBuffer().length() > LONGEST_PAGE) {
        tooLong = true;
      }
      stopWhereItGoesTooFar();
    }
  }
}
