package slipday.season.chore;

import java.util.Comparator;
import java.util.List;
import slipday.measure.Reason;

/**
 * One thing to do.
 *
 * @param subject the planting, cross, lot or site it is about, by name
 * @param key tells it from every other chore of the season, and stays when dates and numbers
 *     change; a round through the garden is known by its day
 * @param title a few words, the subject's name among them
 * @param description how it is done, a paragraph each
 * @param cautions what can hurt someone, a paragraph each
 * @param reason why it is due then
 */
public record Chore(
    ChoreKind kind,
    String subject,
    String key,
    String title,
    ChoreTime time,
    List<String> description,
    List<String> cautions,
    Reason reason) {

  /** By start, then by kind, then by key. */
  public static final Comparator<Chore> ORDER =
      Comparator.comparing((Chore c) -> c.time.start())
          .thenComparing(Chore::kind)
          .thenComparing(Chore::key);

  public Chore {
    description = List.copyOf(description);
    cautions = List.copyOf(cautions);
  }
}
