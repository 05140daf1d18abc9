package slipday.output;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipday.finding.Finding;
import slipday.measure.Reason;

/**
 * Something about a plan that can be asked "why", with its answer.
 *
 * @param subject the planting, cross, bed … it is about
 * @param topic an event, a condition, a rule …: {@code first-male}
 * @param aliases other words for the topic
 * @param answer the value in a few words, where there is one
 * @param because what the value rests on
 * @param years the day in each weather year, where it is forecast from them
 * @param findings what was found under this topic, where it is a rule
 */
public record Question(
    String subject,
    String topic,
    Set<String> aliases,
    String answer,
    List<Reason> because,
    List<YearDay> years,
    List<Finding> findings) {
  /** The day in one weather year, at the crop's usual pace; empty where it does not come. */
  public record YearDay(String year, Optional<LocalDate> day) {}

  static Question of(String subject, String topic, String answer, List<Reason> because) {
    return new Question(subject, topic, Set.of(), answer, because, List.of(), List.of());
  }

  static Question of(String subject, String rule, List<Finding> findings) {
    List<Reason> because = findings.stream().flatMap(f -> f.because().stream()).toList();
    String answer = findings.get(0).level().word() + ": " + findings.get(0).message();
    return new Question(subject, rule, Set.of(), answer, because, List.of(), findings);
  }

  Question orAs(Set<String> words) {
    return new Question(subject, topic, words, answer, because, years, findings);
  }

  Question in(List<YearDay> days) {
    return new Question(subject, topic, aliases, answer, because, days, findings);
  }
}
