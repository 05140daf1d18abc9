package slipday.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.language.Binder;
import slipday.language.Block;
import slipday.language.BoundFile;
import slipday.language.Declaration;
import slipday.language.Value;
import slipday.source.Source;
import slipday.source.Span;
import slipday.syntax.SeasonFile;
import slipday.syntax.SeasonParser;

/** A plan with all it includes, parsed and bound. */
final class Loader {
  private final FileTexts texts;
  private final Path root;
  private final Path record;
  private final boolean outsideAllowed;
  private final List<Finding> findings = new ArrayList<>();
  private final List<SeasonFile> files = new ArrayList<>();
  private final List<BoundFile> each = new ArrayList<>();
  private BoundFile said = BoundFile.EMPTY;
  private final Set<Path> taken = new HashSet<>();
  private final Deque<Path> chain = new ArrayDeque<>();

  private Loader(FileTexts texts, Path root, Path record, boolean outsideAllowed) {
    this.texts = texts;
    this.root = root;
    this.record = record;
    this.outsideAllowed = outsideAllowed;
  }

  /** The files in the order they were taken in, and what each says and they all say. */
  record Loaded(List<SeasonFile> files, List<BoundFile> each, BoundFile said) {}

  static Outcome<Loaded> load(FileTexts texts, PlanSource plan, Path path, boolean outsideAllowed) {
    Path root = plan.folder().toAbsolutePath().normalize();
    Path first = path.toAbsolutePath().normalize();
    Loader loader = new Loader(texts, root, recordFolder(first), outsideAllowed);
    loader.take(plan.first(), first, root);
    Loaded loaded = new Loaded(List.copyOf(loader.files), List.copyOf(loader.each), loader.said);
    return new Outcome<>(loaded, loader.findings);
  }

  /** The folder the record of a plan lies in, beside it. */
  static Path recordFolder(Path plan) {
    return plan.resolveSibling("record");
  }

  private void take(Source source, Path path, Path folder) {
    taken.add(path);
    chain.push(path);
    Outcome<SeasonFile> parsed = SeasonParser.parse(source);
    files.add(parsed.value());
    Outcome<BoundFile> bound = Binder.bind(parsed.value());
    findings.addAll(parsed.findings());
    findings.addAll(bound.findings());
    each.add(bound.value());
    said = said.and(bound.value());
    for (Block block : bound.value().blocks()) {
      if (block.declaration() == Declaration.INCLUDE && block.head().isPresent()) {
        Value path2 = block.head().get().find("path").orElseThrow();
        include(block.head().get().text("path"), path2.span(), folder, source);
      }
    }
    chain.pop();
  }

  private void include(String written, Span at, Path folder, Source from) {
    Path target;
    try {
      target = folder.resolve(written).normalize();
    } catch (InvalidPathException e) {
      findings.add(Finding.error("include-missing", at, "`" + written + "` can't be a path."));
      return;
    }
    if (!outsideAllowed && escapes(target)) {
      findings.add(
          Finding.error("include-outside", at, "`" + written + "` lies outside the plan's folder.")
              .withHelp("Move it in beside the plan, or run with `--include-outside`."));
      return;
    }
    String prefix = from.folder();
    if (texts.isFolder(target)) {
      folder(target, prefix + written, at);
    } else if (!isRecordToCome(target)) {
      file(target, prefix + written, at);
    }
  }

  /** The folder that the first entry makes: nothing is lost where there is none yet. */
  private boolean isRecordToCome(Path target) {
    return target.equals(record) && texts.nearest(target).isEmpty();
  }

  /** By the path as written, and where it exists by where it really leads. */
  private boolean escapes(Path target) {
    if (!target.startsWith(root)) {
      return true;
    }
    try {
      return Files.exists(target) && !target.toRealPath().startsWith(root.toRealPath());
    } catch (IOException e) {
      return false;
    }
  }

  private void folder(Path target, String name, Span at) {
    List<Path> inside = new ArrayList<>();
    try {
      texts.in(target).stream().filter(p -> p.toString().endsWith(".season")).forEach(inside::add);
    } catch (IOException e) {
      findings.add(Finding.error("include-missing", at, "`" + name + "` can't be read."));
    }
    String slashed = name.endsWith("/") ? name : name + "/";
    inside.forEach(p -> file(p, slashed + p.getFileName(), at));
  }

  private void file(Path target, String name, Span at) {
    if (chain.contains(target)) {
      findings.add(
          Finding.error(
                  "include-circle",
                  at,
                  "`" + name + "` includes itself, directly or by way of others.")
              .withHelp("Take one of the includes out."));
      return;
    }
    if (taken.contains(target)) {
      return;
    }
    Outcome<Optional<Source>> read = texts.read(target, name);
    for (Finding f : read.findings()) {
      findings.add(texts.named("include-missing", at, target, f));
    }
    read.value()
        .ifPresent(s -> take(s, target, Optional.ofNullable(target.getParent()).orElse(target)));
  }
}
