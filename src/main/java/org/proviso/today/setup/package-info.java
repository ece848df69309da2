/** The pages of Setup: files, accounts, court orders. */
@NullMarked
package org.proviso.today.setup;

import org.jspecify.annotations.NullMarked;
