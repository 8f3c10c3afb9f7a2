package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import swardcase.check.Fault;
import swardcase.check.FaultsException;

class BegunTest {

  @Test
  void get_askedTwice_doesTheWorkOnce() {
    Begun<Object> begun = Begun.of(Object::new);

    assertThat(begun.get()).isNotNull().isSameAs(begun.get());
  }

  @Test
  void get_afterFaults_throwsThemAsTheyWere() {
    FaultsException faults =
        new FaultsException(List.of(new Fault("farm.yaml", 3, "", "must be there", "", "")));
    Begun<String> begun =
        Begun.of(
            () -> {
              throw faults;
            });

    assertThatThrownBy(begun::get).isSameAs(faults);
  }

  @Test
  void get_afterAnError_throwsIt() {
    Begun<String> begun =
        Begun.of(
            () -> {
              throw new StackOverflowError("too deep");
            });

    assertThatThrownBy(begun::get).isInstanceOf(StackOverflowError.class).hasMessage("too deep");
  }
}
