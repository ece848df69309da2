package org.proviso.database;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.TestTemplate;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A test that runs once on H2 and once on PostgreSQL, each time with empty tables; it takes a {@link TestOffice}.
 * Where no PostgreSQL server can be started its half is skipped with one clear line, and fails under {@code CI=true}.
 */
@TestTemplate
@ExtendWith(BothDatabases.class)
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface OnBothDatabases {}
