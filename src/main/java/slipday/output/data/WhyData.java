package slipday.output.data;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.measure.Reason;

/** The answers to a question, or the questions there are where only a thing was named. */
public record WhyData(Head slipday, String plan, List<Answer> answers) {
  /**
   * One answer.
   *
   * @param subject the thing it is about; may be empty
   * @param topic what was asked of it
   * @param answer the value in a few words; may be empty
   * @param because empty where only the questions are listed
   * @param years the day in each weather year at the crop's usual pace
   */
  public record Answer(
      String subject,
      String topic,
      String answer,
      List<ReasonData> because,
      List<YearData> years,
      List<FindingData> findings) {
    public static Answer of(
        String subject,
        String topic,
        String answer,
        List<Reason> because,
        List<YearData> years,
        List<Finding> findings) {
      return new Answer(
          subject,
          topic,
          answer,
          because.stream().map(ReasonData::of).toList(),
          years,
          findings.stream().map(FindingData::of).toList());
    }
  }

  /** A day in one weather year; none where it does not come. */
  public record YearData(String year, Optional<LocalDate> day) {}

  public static WhyData of(String plan, List<Answer> answers) {
    return new WhyData(Head.of("why"), plan, answers);
  }
}
