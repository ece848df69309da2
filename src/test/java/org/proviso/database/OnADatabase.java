package org.proviso.database;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.TestTemplate;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A test of what a service decides, whatever database is under it: it runs on H2 with empty tables, and under
 * {@code CI=true} on PostgreSQL too. It takes a {@link TestOffice}. What SQL may do otherwise on the other database is
 * {@link OnBothDatabases}.
 */
@TestTemplate
@ExtendWith(BothDatabases.class)
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface OnADatabase {}
