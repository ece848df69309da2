/** The facts of a case: what may be known of an envelope, each word with its meaning. */
@NullMarked
package org.proviso.core.adjudication.facts;

import org.jspecify.annotations.NullMarked;
