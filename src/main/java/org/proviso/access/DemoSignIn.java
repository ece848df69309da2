package org.proviso.access;

/** An account that everybody may use in a demonstration: the name to sign in with, whose it is, and their part in words. */
public record DemoSignIn(String userName, String fullName, String part) {}
