package org.proviso.core.act;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Whoever gets a value of such a type has to look at it: the compiler's checks, which know this name, refuse to drop it. */
@Documented
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.CLASS)
@interface CheckReturnValue {}
