package org.proviso.review.facts;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Something asked of somebody about a case ({@code waitsFor}: who has to answer; {@code addressee}: of whom; empty where an older request does not say), and
 * what came back (null while nothing has).
 */
public record ResearchRequest(
        int number,
        WaitsFor waitsFor,
        String addressee,
        String asked,
        String askedBy,
        Instant askedAt,
        @Nullable String found,
        @Nullable String foundBy,
        int version) {}
