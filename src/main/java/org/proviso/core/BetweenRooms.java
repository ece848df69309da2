package org.proviso.core;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Internal to the house: what one room's services have for another's. It asks for no permission, because whoever calls
 * it has asked; so no page and no other way in from outside may reach it.
 */
@Documented
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
public @interface BetweenRooms {}
