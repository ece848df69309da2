package org.proviso.files.flow;

/** Where envelopes went: the outcome with its mark in words, and the style that draws its band. */
public record EnvelopeFlowEnd(String words, String style) {}
