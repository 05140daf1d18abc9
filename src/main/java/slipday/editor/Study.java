package slipday.editor;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.app.Checked;
import slipday.app.Pipeline;
import slipday.finding.Finding;
import slipday.garden.CropBook;
import slipday.language.Block;
import slipday.language.BoundFile;
import slipday.source.Source;
import slipday.syntax.SeasonFile;

/**
 * A plan as it stands in the buffers and on the disk: its text and names.
 *
 * @param plan its first file
 * @param files every file taken in, by path
 */
record Study(
    Path plan,
    Checked checked,
    Map<Path, SeasonFile> files,
    Map<Path, BoundFile> said,
    Symbols symbols) {

  static Study of(Path plan, Checked checked) {
    Map<Path, SeasonFile> files = new LinkedHashMap<>();
    Map<Path, BoundFile> said = new LinkedHashMap<>();
    for (int i = 0; i < checked.files().size(); i++) {
      SeasonFile file = checked.files().get(i);
      Path path = Where.path(file.source());
      files.put(path, file);
      said.put(path, checked.said().get(i));
    }
    boolean across = checked.garden().map(g -> g.season().acrossNewYear()).orElse(false);
    return new Study(plan, checked, files, said, Symbols.of(said.values(), across));
  }

  /** The crop facts in force, those of crops that the plan does not grow among them. */
  CropBook crops() {
    return Pipeline.crops(checked);
  }

  Optional<SeasonFile> file(Path path) {
    return Optional.ofNullable(files.get(path));
  }

  Optional<Source> source(Path path) {
    return file(path).map(SeasonFile::source);
  }

  List<Block> blocks(Path path) {
    BoundFile file = said.get(path);
    return file == null ? List.of() : file.blocks();
  }

  List<Finding> findings() {
    return checked.findings();
  }
}
