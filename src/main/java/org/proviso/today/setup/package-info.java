/** The pages of Set-up: files, accounts, court orders. */
@NullMarked
package org.proviso.today.setup;

import org.jspecify.annotations.NullMarked;
