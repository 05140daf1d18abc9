package slipday.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.opentest4j.AssertionFailedError;
import org.opentest4j.TestAbortedException;

class OutsideToolsTest {
  private static final String CALENDAR =
      "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//trial//EN\r\nBEGIN:VEVENT\r\nUID:1\r\n"
          + "DTSTAMP:20250501T000000Z\r\nDTSTART;VALUE=DATE:20250712\r\nSUMMARY:Überraschung\r\n"
          + "END:VEVENT\r\nEND:VCALENDAR\r\n";

  @Test
  void aMissingToolFailsInCiAndIsSkippedElsewhere() {
    assertThatThrownBy(() -> OutsideTools.requireOrSkip(Optional.empty(), "sundial", true))
        .isInstanceOf(AssertionFailedError.class)
        .hasMessageContaining("no sundial");
    assertThatThrownBy(() -> OutsideTools.requireOrSkip(Optional.empty(), "sundial", false))
        .isInstanceOf(TestAbortedException.class)
        .hasMessageContaining("no sundial");
  }

  @Test
  void aProgramThatIsNotThereDoesNotRun() {
    var tool = new OutsideTools.Tool(List.of("no-such-program-as-this", "-c"), Map.of());
    assertThat(tool.runs("1")).isFalse();
  }

  @Test
  void aScriptThatFailsFailsTheTest() {
    var python = OutsideTools.pythonWithIcalendar();
    assertThatThrownBy(() -> python.run("import sys; sys.exit('wilted')"))
        .isInstanceOf(AssertionFailedError.class)
        .hasMessageContaining("wilted");
  }

  @Test
  void pythonReadsACalendar() {
    String script =
        "import sys, icalendar\n"
            + "for e in icalendar.Calendar.from_ical(sys.argv[1]).walk('VEVENT'):\n"
            + "  print(e['DTSTART'].dt.isoformat(), e['SUMMARY'])";
    assertThat(OutsideTools.pythonWithIcalendar().run(script, CALENDAR))
        .isEqualToIgnoringNewLines("2025-07-12 Überraschung");
  }

  @Test
  void nodeReadsACalendar() {
    String script =
        "const ICAL = require('ical.js');"
            + "const all = new ICAL.Component(ICAL.parse(process.argv[1]));"
            + "for (const v of all.getAllSubcomponents('vevent')) {"
            + "  const e = new ICAL.Event(v); console.log(e.startDate.toString(), e.summary); }";
    assertThat(OutsideTools.nodeWithIcalJs().run(script, CALENDAR))
        .isEqualToIgnoringNewLines("2025-07-12 Überraschung");
  }
}
