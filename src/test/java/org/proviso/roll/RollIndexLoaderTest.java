package org.proviso.roll;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.UnsatisfiedDependencyException;
import org.springframework.boot.test.context.runner.ApplicationContextRunner;
import org.springframework.boot.test.context.runner.WebApplicationContextRunner;

class RollIndexLoaderTest {

    @Test
    void a_verb_of_the_shell_reads_no_roll_into_an_index() {
        new ApplicationContextRunner()
                .withUserConfiguration(RollIndexLoader.class)
                .run(context -> assertThat(context).hasNotFailed().doesNotHaveBean(RollIndexLoader.class));
    }

    /** The server does: here it misses the rooms it would read with. */
    @Test
    void the_server_does() {
        new WebApplicationContextRunner()
                .withUserConfiguration(RollIndexLoader.class)
                .run(context -> assertThat(context)
                        .getFailure()
                        .isInstanceOf(UnsatisfiedDependencyException.class)
                        .hasMessageContaining("rollIndexLoader"));
    }
}
