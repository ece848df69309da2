package org.proviso.core.adjudication.questions;

import java.util.Set;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.finding.FactReader;

/**
 * One thing the law asks about an envelope: a pure function of the facts it declares and of the rules and clocks.
 * Reading a fact that is not declared is a fault that a test finds, because the proof of a rule pack goes through
 * every combination of the declared ones.
 */
public interface Question {

    /** Its name in reports, such as {@code already_voted.mail_ballot}. */
    String key();

    QuestionHeading heading();

    /** The question in words. */
    String asks();

    Set<Fact<?>> reads();

    Answer answer(FactReader facts, QuestionContext setting);
}
