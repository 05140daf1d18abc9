package slipday.editor;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.services.LanguageClient;
import slipday.app.Checked;
import slipday.finding.Finding;

/**
 * Tells findings as one types: mistakes of text and names at once, those of the season when typing
 * pauses. Each has a thread of its own, so that a slip is told while a season is still reckoned.
 */
final class Publisher implements AutoCloseable {
  private static final long PAUSE_MILLIS = 80;

  private final Workspace workspace;
  private final LanguageClient client;
  private final Consumer<Throwable> log;
  private final Runnable reckoned;
  private final ScheduledExecutorService names = worker("names");
  private final ScheduledExecutorService seasons = worker("seasons");
  private final AtomicLong state = new AtomicLong();
  private final Map<Path, List<Finding>> findings = new ConcurrentHashMap<>();

  /** What is told of a file, by the plan it is of: several may take the same file in. */
  private final Map<Path, Map<Path, List<Diagnostic>>> told = new TreeMap<>();

  /**
   * @param reckoned run when a season has been reckoned anew
   */
  Publisher(
      Workspace workspace, LanguageClient client, Consumer<Throwable> log, Runnable reckoned) {
    this.workspace = workspace;
    this.client = client;
    this.log = log;
    this.reckoned = reckoned;
  }

  private static ScheduledExecutorService worker(String name) {
    return Executors.newSingleThreadScheduledExecutor(
        task -> {
          Thread thread = new Thread(task, name);
          thread.setDaemon(true);
          return thread;
        });
  }

  /** Something was typed, opened, closed or saved. */
  void changed() {
    long now = state.incrementAndGet();
    run(names, 0, () -> names(now));
    run(seasons, PAUSE_MILLIS, () -> season(now));
  }

  private void run(ScheduledExecutorService worker, long delay, Runnable task) {
    Runnable careful =
        () -> {
          try {
            task.run();
          } catch (RuntimeException | StackOverflowError e) {
            log.accept(e);
          }
        };
    if (!worker.isShutdown()) {
      Future<?> unused = worker.schedule(careful, delay, TimeUnit.MILLISECONDS);
    }
  }

  /** Mistakes of text and names hide the season's findings, as they do on the command line. */
  private void names(long now) {
    if (state.get() != now) {
      return;
    }
    Set<Path> plans = workspace.plans();
    for (Path plan : plans) {
      List<Finding> found = workspace.study(plan).findings();
      if (!found.isEmpty() || !isTold(plan)) {
        tell(now, plan, found);
      }
    }
    withdrawAllBut(plans);
  }

  private void season(long now) {
    if (state.get() != now) {
      return;
    }
    for (Path plan : workspace.plans()) {
      Checked checked = workspace.reckon(plan);
      if (tell(now, plan, checked.findings())) {
        reckoned.run();
      }
    }
  }

  /**
   * @return false where something was typed since, and what was found is left aside
   */
  private synchronized boolean tell(long now, Path plan, List<Finding> found) {
    if (state.get() != now) {
      return false;
    }
    findings.put(plan, found);
    Map<Path, List<Diagnostic>> byFile = Diagnostics.of(plan, found);
    Set<Path> files = new TreeSet<>(workspace.study(plan).files().keySet());
    files.addAll(byFile.keySet());
    for (Path file : files) {
      told.computeIfAbsent(file, f -> new TreeMap<>())
          .put(plan, byFile.getOrDefault(file, List.of()));
    }
    Set<Path> changed = new TreeSet<>(files);
    told.forEach(
        (file, parts) -> {
          if (!files.contains(file) && parts.remove(plan) != null) {
            changed.add(file);
          }
        });
    changed.forEach(this::publish);
    return true;
  }

  private boolean isTold(Path plan) {
    return findings.containsKey(plan);
  }

  private synchronized void withdrawAllBut(Set<Path> plans) {
    List<Path> gone = findings.keySet().stream().filter(p -> !plans.contains(p)).toList();
    for (Path plan : gone) {
      findings.remove(plan);
      List<Path> changed =
          told.entrySet().stream()
              .filter(file -> file.getValue().remove(plan) != null)
              .map(Map.Entry::getKey)
              .toList();
      changed.forEach(this::publish);
    }
  }

  /** What is found alike for two plans is told once. */
  private void publish(Path file) {
    Map<Path, List<Diagnostic>> parts = told.getOrDefault(file, Map.of());
    List<Diagnostic> all = parts.values().stream().flatMap(List::stream).distinct().toList();
    if (parts.isEmpty()) {
      told.remove(file);
    }
    client.publishDiagnostics(new PublishDiagnosticsParams(Where.uri(file), all));
  }

  /** The plans whose findings are told. */
  Set<Path> plans() {
    return new TreeSet<>(findings.keySet());
  }

  /** The findings told last of a plan. */
  List<Finding> told(Path plan) {
    return findings.getOrDefault(plan, List.of());
  }

  @Override
  public void close() {
    // What is being told is told to its end: an interrupt would break the stream.
    names.shutdown();
    seasons.shutdown();
  }
}
