package org.proviso.journey;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;
import org.proviso.Proviso;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;

/** A test that works on the pages of the one server over the {@link PagesOffice}. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(classes = Proviso.class, properties = "spring.datasource.url=" + PagesOffice.DATABASE)
@Import(PagesOffice.Server.class)
@ExtendWith(PagesOffice.class)
@interface OnPages {}
