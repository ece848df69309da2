package org.proviso.browser;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Tests that use the office as its people do: a method is given a {@link Browser} of its own on the {@link RunningOffice}
 * that all share, and may ask for that too. Without a browser on the machine they are skipped with one clear line; under
 * {@code CI=true} they fail.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(JourneyExtension.class)
public @interface Journey {}
