package org.proviso.review.mail;

import java.time.LocalDate;
import org.proviso.core.UserName;

/** The answer of the mail-ballot desk that holds: on which day, by whom there, and why it replaces an earlier one (or empty). */
public record GivenAnswer(
        int number, DeskAnswer answer, LocalDate answeredOn, String answeredBy, String because, UserName recordedBy) {}
