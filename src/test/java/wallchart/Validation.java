package wallchart;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;

/**
 * Marks a check whose inputs <em>and</em> result come from outside this project: a standard, a published table, a worked
 * example. The source is quoted beside the check with its units ("common practice, no source" or "from memory" where that is
 * so), and the tolerance is that of the source.
 *
 * <p>A marker only: put it beside {@code @Test}, {@code @ParameterizedTest} or jqwik's {@code @Property}, or on a class. It
 * tags the check {@code validation} for both engines (each reads only its own tag annotation), so
 * {@code mvn test -Dgroups=validation} runs just these.
 */
@Documented
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@Tag("validation")
@net.jqwik.api.Tag("validation")
public @interface Validation {}
