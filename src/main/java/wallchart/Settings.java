package wallchart;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import wallchart.chart.ChartRules;
import wallchart.chart.PatientGroup;
import wallchart.chart.RequiredFields;
import wallchart.grading.PhysicsLimits;
import wallchart.quantity.LengthUnit;
import wallchart.signoff.ReviewLimits;
import wallchart.technique.ReferenceLevel;

/**
 * The site's settings: typed, complete, read once and never changed while the program runs.
 *
 * <p>Each key, its unit, its default and the reason to change it stand in {@code config/site.example.yaml}; a test holds the two
 * together.
 */
public record Settings(
        Server server,
        DatabasePart database,
        Site site,
        List<PatientGroup> patientGroups,
        ChartPart chart,
        List<ReferenceLevel> referenceLevels,
        SessionPart session,
        LedgerPart ledger,
        ReviewLimits reviewLimits,
        PhysicsLimits physicsLimits,
        EquipmentPart equipment) {

    private static final int HIGHEST_PORT = 65_535;

    /**
     * Where the service listens.
     *
     * @param host address of one interface; the default is reachable from this machine only
     * @param port 0 to 65535, 0 for any free one
     * @param secureCookies true where a proxy in front of the service speaks TLS
     */
    public record Server(String host, int port, boolean secureCookies) {
        public Server {
            if (host.isBlank()) {
                throw new IllegalArgumentException("host is empty: name one interface, such as 127.0.0.1");
            }
            if (port < 0 || port > HIGHEST_PORT) {
                throw new IllegalArgumentException("port is " + port + ": 0 to " + HIGHEST_PORT);
            }
        }
    }

    /**
     * Where the data are kept.
     *
     * @param url JDBC address of an H2 file or a PostgreSQL database
     * @param user owner of the tables
     * @param passwordFile file whose first line is the owner's password; made at the first start of an H2 file
     * @param poolSize connections kept for requests, 1 to 100
     */
    public record DatabasePart(String url, String user, Path passwordFile, int poolSize) {
        private static final int MOST = 100;

        public DatabasePart {
            if (!url.startsWith("jdbc:h2:") && !url.startsWith("jdbc:postgresql:")) {
                throw new IllegalArgumentException("url is \"" + url + "\": write jdbc:h2:file:… or jdbc:postgresql:…");
            }
            if (user.isBlank()) {
                throw new IllegalArgumentException("user is empty: name the owner of the tables");
            }
            if (poolSize < 1 || poolSize > MOST) {
                throw new IllegalArgumentException("poolSize is " + poolSize + ": 1 to " + MOST);
            }
        }
    }

    /**
     * @param name the department's name on pages and sheets, not empty
     * @param lengthUnit what pages and sheets show and take lengths in
     * @param address where phones reach the service, without a slash at its end; empty for the address that the service listens at
     */
    public record Site(String name, LengthUnit lengthUnit, Optional<String> address) {
        private static final Pattern ADDRESS =
                Pattern.compile("https?://([A-Za-z0-9.-]+|\\[[0-9A-Fa-f:.]+])(:[0-9]{1,5})?");

        public Site {
            address.filter(text -> !ADDRESS.matcher(text).matches()).ifPresent(text -> {
                throw new IllegalArgumentException("address is \"" + text
                        + "\": write https:// and the host, with its port where it needs one, and nothing behind it");
            });
            if (name.isBlank()) {
                throw new IllegalArgumentException("name is empty: write the department's name");
            }
        }
    }

    /**
     * What the site asks of a chart.
     *
     * @param requiredFields rule sets whose fields every row must fill; may be empty
     * @param reviewAfterMonths months from publishing to the next review, 1 to 60
     */
    public record ChartPart(Set<RequiredFields> requiredFields, int reviewAfterMonths) {
        private static final int MOST = 60;

        public ChartPart {
            if (reviewAfterMonths < 1 || reviewAfterMonths > MOST) {
                throw new IllegalArgumentException("reviewAfterMonths is " + reviewAfterMonths + ": 1 to " + MOST);
            }
            requiredFields = Set.copyOf(requiredFields);
        }
    }

    /**
     * How long a sign-in lasts.
     *
     * @param idle since the last request, 2 minutes to 24 hours
     * @param absolute since the sign-in, not under idle, at most 24 hours
     */
    public record SessionPart(Duration idle, Duration absolute) {
        private static final Duration SHORTEST = Duration.ofMinutes(2);
        private static final Duration DAY = Duration.ofHours(24);

        public SessionPart {
            if (idle.compareTo(SHORTEST) < 0 || idle.compareTo(DAY) > 0) {
                throw new IllegalArgumentException(
                        "idleMinutes is " + idle.toMinutes() + ": " + SHORTEST.toMinutes() + " to " + DAY.toMinutes());
            }
            if (absolute.compareTo(idle) < 0 || absolute.compareTo(DAY) > 0) {
                throw new IllegalArgumentException(
                        "absoluteHours is " + absolute.toHours() + ": not under idleMinutes, at most " + DAY.toHours());
            }
        }
    }

    /** @param folder where the ledger's checkpoints and their key are kept; empty for the usual place */
    public record LedgerPart(Optional<Path> folder) {}

    /** @param outputDueMonths months from one measurement of a tube's output to the next, 1 to 60 */
    public record EquipmentPart(int outputDueMonths) {
        private static final int MOST = 60;

        public EquipmentPart {
            if (outputDueMonths < 1 || outputDueMonths > MOST) {
                throw new IllegalArgumentException("outputDueMonths is " + outputDueMonths + ": 1 to " + MOST);
            }
        }
    }

    public Settings {
        patientGroups = List.copyOf(patientGroups);
        referenceLevels = List.copyOf(referenceLevels);
        requireDistinct(
                "patientGroups", patientGroups.stream().map(PatientGroup::id).toList());
        requireDistinct(
                "referenceLevels",
                referenceLevels.stream()
                        .map(level -> level.bodyPart() + " " + level.projection() + " " + level.patientGroup()
                                + (level.unit().isTimesArea() ? " kerma-area product" : " air kerma"))
                        .toList());
        rules(patientGroups, chart);
    }

    /** Where the ledger's checkpoints are kept: as chosen, else beside the file of the database, else in the folder {@code data}. */
    public Path ledgerFolder() {
        return ledger.folder().orElseGet(this::usualLedgerFolder);
    }

    private Path usualLedgerFolder() {
        var file = "jdbc:h2:file:";
        return database.url().startsWith(file)
                ? Path.of(database.url().substring(file.length()) + ".ledger")
                : Path.of("./data/wallchart.ledger");
    }

    /** What the site chose for all its charts; the groups have been found fit for it. */
    public ChartRules chartRules() {
        return rules(patientGroups, chart);
    }

    private static ChartRules rules(List<PatientGroup> groups, ChartPart chart) {
        return new ChartRules(groups, chart.requiredFields());
    }

    private static void requireDistinct(String key, List<String> names) {
        var twice = new ArrayList<>(names);
        new TreeSet<>(names).forEach(twice::remove);
        if (!twice.isEmpty()) {
            throw new IllegalArgumentException(key + " has \"" + twice.get(0) + "\" twice: once each");
        }
    }

    /** The settings of a site that has written none. */
    public static Settings defaults() {
        return new Settings(
                new Server("127.0.0.1", 7070, false),
                new DatabasePart("jdbc:h2:file:./data/wallchart", "wallchart", Path.of("./data/database.password"), 10),
                new Site("Radiography department", LengthUnit.CENTIMETRE, Optional.empty()),
                List.of(new PatientGroup(PatientGroup.ADULT, "Adult", PatientGroup.Basis.AGE)),
                new ChartPart(Set.of(), 12),
                List.of(),
                new SessionPart(Duration.ofMinutes(15), Duration.ofHours(12)),
                new LedgerPart(Optional.empty()),
                ReviewLimits.DEFAULTS,
                PhysicsLimits.DEFAULTS,
                new EquipmentPart(12));
    }
}
