package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.PublishingFixtures.draft;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.chart.Publication.Outdated;
import wallchart.chart.Publication.Published;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;

class RivalPublicationsTest extends OnEveryDatabase {

    private Actor lead;
    private PublishingFixtures department;
    private Charts charts;

    @BeforeEach
    void a_department_with_a_room() {
        department = PublishingFixtures.aDepartmentIn(database());
        lead = department.lead();
        charts = department.charts();
    }

    @Test
    void of_two_who_publish_on_the_same_base_exactly_one_wins() throws Exception {
        department.publish(0, aChart().withBand(18, 24).content());
        var results = atOnce(
                () -> charts.publish(lead, draft(1, aChart().withBand(18, 25).content())), () -> department
                        .charts()
                        .publish(lead, draft(1, aChart().withBand(18, 26).content())));
        assertThat(results).filteredOn(Published.class::isInstance).hasSize(1);
        assertThat(results).filteredOn(new Outdated(2)::equals).hasSize(1);
        var winner =
                results.stream().filter(Published.class::isInstance).findFirst().orElseThrow();
        assertThat(department.charts().version("r1", 2).orElseThrow().content())
                .isEqualTo(((Published) winner).version().content());
    }

    /** Both have read the newest version before either writes: the barrier stands where the version is already written. */
    @Test
    void a_rival_that_read_the_same_newest_version_loses_to_the_unique_number() throws Exception {
        department.publish(0, aChart().withBand(18, 24).content());
        var rivalPublished = new ArrayList<Publication>();
        var publication =
                charts.publish(lead, draft(1, aChart().withBand(18, 25).content()), (tx, version) -> {
                    var rival = new Thread(() -> rivalPublished.add(department
                            .charts()
                            .publish(lead, draft(1, aChart().withBand(18, 26).content()))));
                    rival.start();
                    waitFor(rival, Duration.ofMillis(500));
                    assertThat(rivalPublished)
                            .as("the rival waits for our commit")
                            .isEmpty();
                });
        assertThat(publication).isInstanceOf(Published.class);
        for (int i = 0; i < 100 && rivalPublished.isEmpty(); i++) {
            Thread.sleep(50);
        }
        assertThat(rivalPublished).containsExactly(new Outdated(2));
    }

    private static void waitFor(Thread thread, Duration atMost) {
        try {
            thread.join(atMost.toMillis());
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    private static List<Publication> atOnce(Callable<Publication> one, Callable<Publication> other) throws Exception {
        var barrier = new CyclicBarrier(2);
        var threads = Executors.newFixedThreadPool(2);
        try {
            var futures = new ArrayList<Future<Publication>>();
            for (var publishing : List.of(one, other)) {
                futures.add(threads.submit(() -> {
                    barrier.await();
                    return publishing.call();
                }));
            }
            return List.of(futures.get(0).get(), futures.get(1).get());
        } finally {
            threads.shutdown();
        }
    }
}
