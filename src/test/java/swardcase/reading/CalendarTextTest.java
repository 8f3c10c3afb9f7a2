package swardcase.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Month;
import java.time.MonthDay;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CalendarTextTest {

  @ParameterizedTest
  @ValueSource(strings = {"30 January", "30 Jan", "30 jan.", "30. January", "2027-01-30"})
  void day_inAnyAcceptedForm_isRead(String text) {
    assertThat(CalendarText.findDay(text)).contains(MonthDay.of(Month.JANUARY, 30));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"31 April", "30 Ja", "January", "30/1", "2027-02-29", "2027-13-01", "99 May", ""})
  void day_thatDoesNotExistOrIsUnclear_isRefused(String text) {
    assertThat(CalendarText.findDay(text)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"June", "jun", " JUNE "})
  void month_byNameOrItsBeginning_isRead(String text) {
    assertThat(CalendarText.findMonth(text)).contains(Month.JUNE);
  }
}
