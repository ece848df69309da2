/** The rules on their pages: county rulings, a changed rule pack, and what other rules would change. */
@NullMarked
package org.proviso.setup.rules;

import org.jspecify.annotations.NullMarked;
