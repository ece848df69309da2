/**
 * From records to the facts of one case: who says what of an envelope, with the evidence.
 * What the records cannot tell stays unknown.
 */
@NullMarked
package org.proviso.core.adjudication.finding;

import org.jspecify.annotations.NullMarked;
