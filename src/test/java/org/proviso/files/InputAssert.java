package org.proviso.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** Says of an attempt to read a file exactly where and why it was refused. */
public final class InputAssert {

    private InputAssert() {}

    public static void refused(ThrowingCallable reading, String file, int line, String column, String reason) {
        InputException refusal = catchThrowableOfType(InputException.class, reading);
        assertThat(refusal).as("the refusal").isNotNull();
        assertThat(refusal.file()).isEqualTo(file);
        assertThat(refusal.line()).as("line of " + refusal).isEqualTo(line);
        assertThat(refusal.column()).isEqualTo(column);
        assertThat(refusal.reason()).contains(reason);
        assertThat(refusal.getMessage()).startsWith(file).doesNotContain("\n");
        assertThat(refusal.all().get(0).getMessage()).endsWith(refusal.reason());
    }
}
