package org.proviso.roll;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.UnsatisfiedDependencyException;
import org.springframework.boot.test.context.runner.ApplicationContextRunner;
import org.springframework.boot.test.context.runner.WebApplicationContextRunner;

class RollReadingTest {

    @Test
    void a_verb_of_the_shell_reads_no_roll_into_an_index() {
        new ApplicationContextRunner()
                .withUserConfiguration(RollReading.class)
                .run(context -> assertThat(context).hasNotFailed().doesNotHaveBean(RollReading.class));
    }

    /** The server does: here it misses the rooms it would read with. */
    @Test
    void the_server_does() {
        new WebApplicationContextRunner()
                .withUserConfiguration(RollReading.class)
                .run(context -> assertThat(context)
                        .getFailure()
                        .isInstanceOf(UnsatisfiedDependencyException.class)
                        .hasMessageContaining("rollReading"));
    }
}
