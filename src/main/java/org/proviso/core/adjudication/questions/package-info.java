/** The questions that the law asks about an envelope, each a small pure class. */
@NullMarked
package org.proviso.core.adjudication.questions;

import org.jspecify.annotations.NullMarked;
