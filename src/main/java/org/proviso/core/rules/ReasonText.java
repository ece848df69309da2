package org.proviso.core.rules;

/** What a pack says of a reason: its survey heading and the sentence that the voter reads. */
public record ReasonText(SurveyHeading survey, String notice) {}
