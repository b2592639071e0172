package wallchart;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;

/**
 * Marks a check against a number that this project computed earlier. The tolerance is tight; if the number moves, a person
 * explains why in the commit that moves it. Says nothing about whether the number is right: that is what {@link Validation} is
 * for.
 *
 * <p>A marker only: put it beside {@code @Test}, {@code @ParameterizedTest} or jqwik's {@code @Property}, or on a class. It
 * tags the check {@code regression} for both engines (each reads only its own tag annotation).
 */
@Documented
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@Tag("regression")
@net.jqwik.api.Tag("regression")
public @interface Regression {}
