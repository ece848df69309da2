package org.proviso.core;

/** How an application reached the office; the event that must be on time differs (52 USC 20507(a)(1)(A)-(D)). */
public enum RegistrationChannel implements Code {
    IN_PERSON,
    ONLINE,
    MAIL,
    MOTOR_VEHICLE,
    AGENCY,
    DRIVE,
    SAME_DAY
}
