package org.proviso.core.adjudication.proof;

/** A promise that a rule pack breaks, with the smallest case that shows it, in plain words. */
public record Violation(String promise, String counterexample) {}
