package slipday.syntax;

import java.util.List;
import slipday.source.Source;

/** A file as lines and comments, in the order they stand. */
public record SeasonFile(Source source, List<Line> lines, List<Comment> comments) {}
