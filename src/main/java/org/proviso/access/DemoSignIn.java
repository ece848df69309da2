package org.proviso.access;

import org.proviso.core.UserName;

/** An account that everybody may use in a demonstration: the name to sign in with, whose it is, and their part in words. */
public record DemoSignIn(UserName userName, String fullName, String part) {}
