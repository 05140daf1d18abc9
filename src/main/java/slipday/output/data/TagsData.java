package slipday.output.data;

import java.util.List;
import slipday.descent.Tags;
import slipday.season.Season;

/**
 * The tags still free, by planting.
 *
 * @param plantings those that seed is saved of, or that are pollinated by hand
 * @param check whether each tag ends with a check character of ISO/IEC 7064, mod 37,36
 */
public record TagsData(
    Head slipday, String plan, SeasonData season, boolean check, List<FreeTags> plantings) {
  /**
   * One planting's.
   *
   * @param planting by its name
   * @param tags in the order to be used
   */
  public record FreeTags(String planting, List<String> tags) {}

  public static TagsData of(String plan, Season season, boolean check, List<Tags.Free> free) {
    return new TagsData(
        Head.of("tags"),
        plan,
        SeasonData.of(season),
        check,
        free.stream().map(f -> new FreeTags(f.planting().name(), f.tags())).toList());
  }
}
