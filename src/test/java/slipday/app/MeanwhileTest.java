package slipday.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class MeanwhileTest {
  @Test
  void isDoneOnceHoweverOftenAskedFor() {
    AtomicInteger times = new AtomicInteger();
    Meanwhile<Integer> begun = Meanwhile.begin(times::incrementAndGet);
    assertThat(begun.get()).isEqualTo(1);
    assertThat(begun.get()).isEqualTo(1);
    Meanwhile<Integer> later = Meanwhile.later(times::incrementAndGet);
    assertThat(times).hasValue(1);
    assertThat(later.get()).isEqualTo(2);
    assertThat(later.get()).isEqualTo(2);
  }

  @Test
  void aFaultComesOutWhereItIsAskedFor() {
    IllegalStateException fault = new IllegalStateException("broken");
    Meanwhile<String> meanwhile =
        Meanwhile.begin(
            () -> {
              throw fault;
            });
    assertThatThrownBy(meanwhile::get).isSameAs(fault);
    StackOverflowError tooDeep = new StackOverflowError();
    Meanwhile<String> deep =
        Meanwhile.begin(
            () -> {
              throw tooDeep;
            });
    assertThatThrownBy(deep::get).isSameAs(tooDeep);
  }

  @Test
  void anInterruptionIsKeptForTheAsker() {
    Meanwhile<String> meanwhile = Meanwhile.begin(() -> "done");
    Thread.currentThread().interrupt();
    assertThat(meanwhile.get()).isEqualTo("done");
    assertThat(Thread.interrupted()).isTrue();
  }
}
