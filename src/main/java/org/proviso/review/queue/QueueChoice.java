package org.proviso.review.queue;

/** One value that a column of the list has, and how it reads. */
public record QueueChoice(String value, String words) {}
