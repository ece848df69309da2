/** The invented county: its streets and homes, its people and their registrations, its ballots, and all chance. */
@NullMarked
package org.proviso.sample.county;

import org.jspecify.annotations.NullMarked;
