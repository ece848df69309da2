/** The office's own words: voters, envelopes, records and ballots, with no framework beneath them. */
@NullMarked
package org.proviso.core;

import org.jspecify.annotations.NullMarked;
