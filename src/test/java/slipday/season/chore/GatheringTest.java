package slipday.season.chore;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slipday.measure.Reason;

class GatheringTest {
  private static final LocalDate DAY = LocalDate.of(2026, 7, 4);

  private static Chore chore(
      ChoreKind kind, String subject, String part, ChoreTime time, String... says) {
    return new Chore(
        kind,
        subject,
        subject + ":" + kind.id() + ":" + time.start(),
        Gathering.begin(kind) + part,
        time,
        List.of(says),
        List.of("Wash your hands."),
        Reason.byDefault(subject));
  }

  private static ChoreTime hours(LocalDate day, int from, int to) {
    return new ChoreTime.Hours(day.atTime(from, 0), day.atTime(to, 0));
  }

  private static List<Chore> gathered(Chore... chores) {
    ChoreBook book =
        new ChoreBook(
            "2026",
            "quince-end",
            "Quince End",
            ZoneId.of("Europe/Paris"),
            LocalDate.of(2026, 1, 1),
            List.of(chores));
    return Gathering.of(book).chores();
  }

  @Test
  void oneEveningIsOneChoreWithWhoseEachThingIs() {
    List<Chore> round =
        gathered(
            chore(ChoreKind.COVER, "amber", "3 for amber", hours(DAY, 20, 21), "Bag 3.", "Tie it."),
            chore(ChoreKind.COVER, "rope", "4 for rope", hours(DAY, 20, 21), "Tape 4.", "Tie it."),
            chore(ChoreKind.COVER, "lane", "5 for lane", hours(DAY, 20, 21), "Bag 3.", "Tie it."));
    assertThat(round).hasSize(1);
    Chore evening = round.get(0);
    assertThat(evening.title()).isEqualTo("Cover tonight: amber, lane, rope");
    assertThat(evening.subject()).isEqualTo("quince-end");
    assertThat(evening.description())
        .containsExactly("amber, lane: Bag 3.", "rope: Tape 4.", "Tie it.");
    assertThat(evening.cautions()).containsExactly("Wash your hands.");
    assertThat(evening.reason().from()).hasSize(3);
  }

  @Test
  void differentHoursAreTold() {
    Chore morning =
        gathered(
                chore(ChoreKind.POLLINATE, "amber", "3 for amber", hours(DAY, 6, 10), "Touch."),
                chore(ChoreKind.POLLINATE, "rope", "4 for rope", hours(DAY, 5, 9), "Touch."))
            .get(0);
    assertThat(morning.title()).isEqualTo("Pollinate 4 for rope and 3 for amber");
    assertThat(morning.time()).isEqualTo(new ChoreTime.Hours(DAY.atTime(5, 0), DAY.atTime(10, 0)));
    assertThat(morning.description())
        .containsExactly("05:00 to 09:00: rope; 06:00 to 10:00: amber.", "Touch.");
  }

  /** Whatever comes before it: what was done on an evening stays done on that evening. */
  @Test
  void aRoundIsKnownByItsDay() {
    assertThat(evenings(0, 2)).containsExactly("round:cover:2026-07-04", "round:cover:2026-07-06");
    assertThat(evenings(-1, 0, 2))
        .containsExactly(
            "round:cover:2026-07-03", "round:cover:2026-07-04", "round:cover:2026-07-06");
  }

  private static List<String> evenings(int... days) {
    return gathered(
            IntStream.of(days)
                .mapToObj(
                    d ->
                        chore(
                            ChoreKind.COVER,
                            "amber",
                            "3 for amber",
                            hours(DAY.plusDays(d), 20, 21)))
                .toArray(Chore[]::new))
        .stream()
        .map(Chore::key)
        .toList();
  }

  @Test
  void otherChoresStayAsTheyAre() {
    Chore sow =
        new Chore(
            ChoreKind.SOW,
            "amber",
            "amber:sow",
            "Sow amber",
            ChoreTime.on(DAY),
            List.of(),
            List.of(),
            Reason.byDefault("x"));
    assertThat(gathered(sow)).containsExactly(sow);
  }
}
