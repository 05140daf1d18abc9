package slipday.editor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.output.Ink;
import slipday.output.Question;
import slipday.output.Questions;
import slipday.output.WhyText;
import slipday.season.Season;

/** The buffers that are open, and the plans they belong to. */
final class Workspace {
  /** Folders above a file in which its plan is looked for. */
  private static final int FOLDERS_ABOVE = 3;

  private static final Pattern PLAN = Pattern.compile("(?m)^\\s*season\\s+\\d{4}");
  private static final Pattern BELONGING = Pattern.compile("(?mi)^[ \\t]*(?:season|include)\\b.*");
  private static final long LARGEST_PLAN = 4L << 20;

  private final Supplier<LocalDate> today;
  private final Map<Path, String> buffers = new HashMap<>();
  private final Map<Path, Study> studies = new HashMap<>();
  private final Map<Path, Path> planOf = new HashMap<>();
  private final Map<Path, Reckoned> reckoned = new HashMap<>();

  /**
   * A season and all that can be asked of it.
   *
   * @param reasons answers in full, of questions that were asked before
   */
  record Reckoned(Season season, Questions questions, Map<Question, String> reasons) {
    static Reckoned of(Season season) {
      Questions questions = Questions.of(season.garden(), Optional.of(season), List.of());
      return new Reckoned(season, questions, Collections.synchronizedMap(new IdentityHashMap<>()));
    }

    /** The answer with every reason beneath it; put into words once, however often it is shown. */
    String why(Question question) {
      return reasons.computeIfAbsent(
          question, WhyText.of(season.garden().season(), Ink.of(false))::text);
    }
  }

  Workspace(Supplier<LocalDate> today) {
    this.today = today;
  }

  synchronized void open(Path path, String text) {
    buffers.put(path, text);
    forget();
    planOf.clear();
  }

  synchronized void change(Path path, String text) {
    String before = buffers.put(path, text);
    forget();
    if (before == null || !belonging(before).equals(belonging(text))) {
      planOf.clear();
    }
  }

  /** The lines of a text by which files belong to plans. */
  private static List<String> belonging(String text) {
    return BELONGING.matcher(text).results().map(MatchResult::group).toList();
  }

  synchronized void close(Path path) {
    buffers.remove(path);
    forget();
    planOf.clear();
  }

  /** Files changed on the disk. */
  synchronized void refresh() {
    forget();
    planOf.clear();
  }

  private void forget() {
    studies.clear();
  }

  synchronized Set<Path> open() {
    return new TreeSet<>(buffers.keySet());
  }

  synchronized Optional<String> text(Path path) {
    return Optional.ofNullable(buffers.get(path));
  }

  /** The plan a file belongs to, read and its names looked up; the season is not reckoned. */
  synchronized Study study(Path path) {
    Path plan = planOf.computeIfAbsent(path, this::findPlan);
    return studies.computeIfAbsent(plan, p -> Study.of(p, pipeline().names(p, Where.name(p))));
  }

  /** The plans of all open files. */
  synchronized Set<Path> plans() {
    Set<Path> plans = new TreeSet<>();
    for (Path path : buffers.keySet()) {
      plans.add(study(path).plan());
    }
    return plans;
  }

  private Pipeline pipeline() {
    return new Pipeline(FileTexts.withOverlays(buffers), false, today.get());
  }

  /** Reckons the season of a plan; takes a while, and holds nobody up. */
  Checked reckon(Path plan) {
    Pipeline pipeline;
    synchronized (this) {
      pipeline = pipeline();
    }
    Checked checked = pipeline.check(plan, Where.name(plan));
    // Here and not when first asked for: an answer to a key is not to wait for it.
    Optional<Reckoned> season = checked.season().map(Reckoned::of);
    synchronized (this) {
      season.ifPresent(s -> reckoned.put(plan, s));
    }
    return checked;
  }

  /** The season as it was last reckoned, if ever. */
  synchronized Optional<Reckoned> reckoned(Path plan) {
    return Optional.ofNullable(reckoned.get(plan));
  }

  /**
   * The first plan, from the file's own folder upwards, that takes the file in; the file itself
   * where it is a plan or where none does.
   */
  private Path findPlan(Path path) {
    if (isPlan(path)) {
      return path;
    }
    Path folder = path.getParent();
    for (int i = 0; i < FOLDERS_ABOVE && folder != null; i++) {
      for (Path candidate : seasonFiles(folder)) {
        if (!candidate.equals(path) && isPlan(candidate) && takesIn(candidate, path)) {
          return candidate;
        }
      }
      folder = folder.getParent();
    }
    return path;
  }

  private boolean takesIn(Path plan, Path path) {
    return pipeline().names(plan, Where.name(plan)).files().stream()
        .anyMatch(f -> Where.path(f.source()).equals(path));
  }

  private boolean isPlan(Path path) {
    String buffer = buffers.get(path);
    if (buffer != null) {
      return PLAN.matcher(buffer).find();
    }
    try {
      return Files.size(path) < LARGEST_PLAN && PLAN.matcher(Files.readString(path)).find();
    } catch (IOException e) {
      return false;
    }
  }

  private List<Path> seasonFiles(Path folder) {
    Set<Path> files = new TreeSet<>();
    buffers.keySet().stream().filter(p -> folder.equals(p.getParent())).forEach(files::add);
    try (Stream<Path> entries = Files.list(folder)) {
      entries.filter(p -> p.toString().endsWith(".season")).forEach(files::add);
    } catch (IOException e) {
      // A folder that can't be listed holds no plan we could read.
    }
    return new ArrayList<>(files);
  }
}
