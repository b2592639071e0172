package wallchart.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What the packages below one root really use of each other. */
record Dependencies(JavaClasses classes, String root) {

    /** Every use that the table does not allow, in words. */
    List<String> violations(DependencyTable table) {
        var violations = new ArrayList<String>();
        for (var type : classes) {
            feature(type).ifPresent(from -> type.getDirectDependenciesFromSelf().forEach(use -> feature(
                            use.getTargetClass().getBaseComponentType())
                    .filter(to -> !to.equals(from))
                    .filter(to -> !table.mayUse().getOrDefault(from, Set.of()).contains(to))
                    .ifPresent(to -> violations.add(from + " may not use " + to + ": " + use.getDescription()))));
        }
        return violations;
    }

    Set<String> features() {
        var features = new TreeSet<String>();
        classes.forEach(type -> feature(type).ifPresent(features::add));
        return features;
    }

    /** First package below the root; empty for the root itself and for everything that is not ours. */
    private Optional<String> feature(JavaClass type) {
        var name = type.getPackageName();
        return name.startsWith(root + ".")
                ? Optional.of(name.substring(root.length() + 1).split("\\.")[0])
                : Optional.empty();
    }
}
