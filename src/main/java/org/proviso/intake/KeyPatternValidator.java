package org.proviso.intake;

import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.constraints.Pattern;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Key;

/** Holds the text of a key against a pattern, as the validator itself does with texts only. */
public final class KeyPatternValidator implements ConstraintValidator<Pattern, Key> {

    private java.util.regex.@Nullable Pattern pattern;

    @Override
    public void initialize(Pattern constraint) {
        pattern = java.util.regex.Pattern.compile(constraint.regexp());
    }

    @Override
    public boolean isValid(@Nullable Key key, ConstraintValidatorContext context) {
        return key == null
                || Objects.requireNonNull(pattern, "initialized before")
                        .matcher(key.value())
                        .matches();
    }
}
