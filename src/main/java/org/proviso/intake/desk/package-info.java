/** What the Intake pages read: lists of envelopes by page, returns by voting location, the next envelope to key. */
@NullMarked
package org.proviso.intake.desk;

import org.jspecify.annotations.NullMarked;
