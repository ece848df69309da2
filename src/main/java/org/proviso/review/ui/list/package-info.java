/** Lists of cases as pages show them: their columns, what narrows them, and the views a person saved. */
@NullMarked
package org.proviso.review.ui.list;

import org.jspecify.annotations.NullMarked;
