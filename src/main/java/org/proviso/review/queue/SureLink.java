package org.proviso.review.queue;

import java.util.List;
import org.proviso.core.PersonName;
import org.proviso.core.VoterId;
import org.proviso.review.CaseVersion;

/** An almost certain link that nobody has confirmed yet: the name on the envelope, the record's id, the evidence. */
public record SureLink(CaseVersion seen, PersonName name, VoterId voterId, double probability, List<String> evidence) {}
