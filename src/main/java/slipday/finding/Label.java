package slipday.finding;

import slipday.source.Span;

/** A place that matters to a finding, and what it has to do with it (may be empty). */
public record Label(Span span, String text) {}
