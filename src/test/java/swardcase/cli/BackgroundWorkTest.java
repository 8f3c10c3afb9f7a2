package swardcase.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import swardcase.check.Fault;
import swardcase.check.FaultsException;

class BackgroundWorkTest {

  @Test
  void get_askedTwice_doesTheWorkOnce() {
    BackgroundWork<Object> begun = BackgroundWork.of(Object::new);

    assertThat(begun.get()).isNotNull().isSameAs(begun.get());
  }

  @Test
  void get_afterFaults_throwsThemAsTheyWere() {
    FaultsException faults =
        new FaultsException(List.of(new Fault("farm.yaml", 3, "", "must be there", "", "")));
    BackgroundWork<String> begun =
        BackgroundWork.of(
            () -> {
              throw faults;
            });

    assertThatThrownBy(begun::get).isSameAs(faults);
  }

  @Test
  void get_afterAnError_throwsIt() {
    BackgroundWork<String> begun =
        BackgroundWork.of(
            () -> {
              throw new StackOverflowError("too deep");
            });

    assertThatThrownBy(begun::get).isInstanceOf(StackOverflowError.class).hasMessage("too deep");
  }
}
