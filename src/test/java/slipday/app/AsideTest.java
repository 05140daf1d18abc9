package slipday.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class AsideTest {
  @Test
  void isDoneOnceHoweverOftenAskedFor() {
    AtomicInteger times = new AtomicInteger();
    Aside<Integer> begun = Aside.begin(times::incrementAndGet);
    assertThat(begun.get()).isEqualTo(1);
    assertThat(begun.get()).isEqualTo(1);
    Aside<Integer> later = Aside.later(times::incrementAndGet);
    assertThat(times).hasValue(1);
    assertThat(later.get()).isEqualTo(2);
    assertThat(later.get()).isEqualTo(2);
  }

  @Test
  void aFaultComesOutWhereItIsAskedFor() {
    IllegalStateException fault = new IllegalStateException("broken");
    Aside<String> aside =
        Aside.begin(
            () -> {
              throw fault;
            });
    assertThatThrownBy(aside::get).isSameAs(fault);
    StackOverflowError tooDeep = new StackOverflowError();
    Aside<String> deep =
        Aside.begin(
            () -> {
              throw tooDeep;
            });
    assertThatThrownBy(deep::get).isSameAs(tooDeep);
  }

  @Test
  void anInterruptionIsKeptForTheAsker() {
    Aside<String> aside = Aside.begin(() -> "done");
    Thread.currentThread().interrupt();
    assertThat(aside.get()).isEqualTo("done");
    assertThat(Thread.interrupted()).isTrue();
  }
}
