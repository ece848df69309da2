package org.proviso.core.adjudication.finding;

import java.util.Set;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;

/**
 * What a person recorded of a case: a search made, a poll-book signature seen, a signature compared, a question
 * answered otherwise with a reason. It takes the place of what the files say, and is evidence itself.
 */
public record RecordedFact(Fact<?> fact, Set<? extends FactWord> words, Evidence evidence) {}
