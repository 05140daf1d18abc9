package slipday.season.chore;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import slipday.measure.Reason;

/** A chore as it is written, paragraph by paragraph. */
final class Draft {
  private final ChoreKind kind;
  private final String subject;
  private final String key;
  private final String title;
  private final List<String> description = new ArrayList<>();
  private final List<String> cautions = new ArrayList<>();

  /**
   * @param keyParts what tells it from others of its kind; no part has a colon in it
   */
  Draft(ChoreKind kind, String subject, String title, Object... keyParts) {
    this.kind = kind;
    this.subject = subject;
    this.title = title;
    StringBuilder joined = new StringBuilder(subject).append(':').append(kind.id());
    Arrays.stream(keyParts).forEach(part -> joined.append(':').append(part));
    this.key = joined.toString();
  }

  Draft says(String paragraph) {
    description.add(paragraph);
    return this;
  }

  Draft says(Optional<String> paragraph) {
    paragraph.ifPresent(description::add);
    return this;
  }

  Draft cautions(List<String> paragraphs) {
    cautions.addAll(paragraphs);
    return this;
  }

  Chore due(ChoreTime time, Reason... from) {
    Reason reason = Reason.derived(title + ": " + Words.when(time) + ".", from);
    return new Chore(kind, subject, key, title, time, description, cautions, reason);
  }
}
