package wallchart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.DepartmentFolder.RoomFiles;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartRules;
import wallchart.chart.Charts;
import wallchart.equipment.EquipmentDocument;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.TubePart;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.Rooms;
import wallchart.people.PeopleFixtures;
import wallchart.people.Person;
import wallchart.people.Role;
import wallchart.store.Database;
import wallchart.store.Mode;
import wallchart.store.SettableClock;
import wallchart.store.TestDatabases;

/** A department is loaded a second time: after an interruption, by mistake, or to go back. */
class LoadingAgainTest {

    private static final ChartRules RULES =
            SettingsFile.read(Path.of("demo-data/site.yaml")).chartRules();

    private final List<String> said = new ArrayList<>();
    private final RoomFiles room =
            new DepartmentFolder(Path.of("demo-data")).rooms().get(0);
    private Database database;
    private Person lead;

    @BeforeEach
    void open() {
        database = Database.open(TestDatabases.inMemory(), Mode.SITE, SettableClock.at("2026-03-02T08:00:00Z"));
        lead = PeopleFixtures.aPerson(PeopleFixtures.peopleOf(database), "lead", Role.LEAD);
    }

    @AfterEach
    void close() {
        database.close();
    }

    private void load(int... files) {
        var chosen = new ArrayList<DepartmentFolder.VersionFiles>();
        for (int file : files) {
            chosen.add(room.versions().get(file));
        }
        new DepartmentLoader(database, RULES, said::add)
                .load(List.of(new RoomFiles(room.room(), room.equipment(), chosen)), lead, 12);
    }

    private List<ChartContent> published() {
        var charts = new Charts(database, new Rooms(database), RULES);
        return charts.versions("r1").stream()
                .map(head -> charts.version("r1", head.number()).orElseThrow().content())
                .toList();
    }

    private ChartContent content(int file) {
        return room.versions().get(file).reading().content();
    }

    @Test
    void after_all_was_loaded_nothing_is_published_again() {
        load(0, 1);
        load(0, 1);
        assertThat(published()).containsExactly(content(1), content(0));
        assertThat(said).anyMatch(line -> line.contains("left out"));
    }

    @Test
    void after_an_interruption_only_the_rest_is_published() {
        load(0);
        load(0, 1);
        assertThat(published()).containsExactly(content(1), content(0));
    }

    @Test
    void an_older_version_by_itself_goes_back_to_it() {
        load(0, 1);
        load(0);
        assertThat(published()).containsExactly(content(0), content(1), content(0));
    }

    private EquipmentDocument equipment(String name, OutputPart output) {
        var written = room.equipment();
        var tube = written.tube();
        return new EquipmentDocument(
                written.room(),
                name,
                written.generator(),
                new TubePart(
                        tube.anodeAngleDeg(),
                        tube.totalFiltrationMmAl(),
                        tube.totalFiltrationMmCu(),
                        tube.focalSpots(),
                        output),
                written.grids(),
                written.receptors(),
                written.supports());
    }

    private void loadEquipment(EquipmentDocument document) {
        new DepartmentLoader(database, RULES, said::add)
                .load(List.of(new RoomFiles(room.room(), document, List.of())), lead, 12);
    }

    /** The files measured the tube on 2026-03-02. */
    private Rooms measuredSince() {
        loadEquipment(room.equipment());
        var rooms = new Rooms(database);
        var newer = equipment(room.equipment().name(), EquipmentFixtures.aSteadyOutput("2026-10-20", "1"));
        rooms.replace(lead.asActor(), 1, newer, "yearly measurement", Map.of());
        return rooms;
    }

    @Test
    void what_was_measured_since_is_not_undone_by_the_same_file() {
        var rooms = measuredSince();
        loadEquipment(room.equipment());
        rooms.refresh();
        assertThat(rooms.revisions("r1")).hasSize(2);
        assertThat(said).last().asString().contains("says what revision 1 says, left out");
        assertThat(rooms.history("r1").get(0).reason()).isEqualTo("Loaded from a file");
    }

    @Test
    void nor_by_a_file_that_changes_something_else() {
        var rooms = measuredSince();
        for (var old : new OutputPart[] {room.equipment().tube().output(), null}) {
            assertThatThrownBy(() -> loadEquipment(equipment("Room 1, painted", old)))
                    .hasMessageContaining("measured on 2026-10-20")
                    .hasMessageContaining("bring equipment.yaml up to date");
        }
        rooms.refresh();
        assertThat(rooms.revisions("r1")).hasSize(2);
        loadEquipment(equipment("Room 1, painted", EquipmentFixtures.aSteadyOutput("2026-10-20", "1")));
        rooms.refresh();
        assertThat(rooms.revisions("r1")).hasSize(3);
    }
}
