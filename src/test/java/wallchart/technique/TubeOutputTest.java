package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.anOutput;
import static wallchart.technique.TechniqueFixtures.PHYSICS;

import org.junit.jupiter.api.Test;
import wallchart.equipment.Tube;
import wallchart.quantity.TubeVoltage;

/** What is remembered of tubes, and for how long. */
class TubeOutputTest {

    private static final TubeVoltage KV = TubeVoltage.kilovolts("75");
    private static final int TRIED_OUT = 200;

    private final TubeOutput outputs = new TubeOutput(PHYSICS);

    private static Tube aTube(String factor) {
        return aRoom().withOutput(anOutput("2026-01-14", factor)).room().tube();
    }

    private Object beam(Tube tube) {
        return outputs.find(tube, KV, tube.totalFiltration()).orElseThrow();
    }

    @Test
    void tubes_that_were_only_tried_out_are_forgotten_and_the_departments_own_stays() throws InterruptedException {
        var own = aTube("1");
        var known = beam(own);
        for (int i = 0; i < TRIED_OUT; i++) {
            beam(aTube("0." + (500 + i)));
        }
        for (int i = 0; i < 50 && outputs.tubes() > 1; i++) {
            System.gc();
            Thread.sleep(20);
        }
        assertThat(outputs.tubes()).isOne();
        assertThat(beam(own)).isSameAs(known);
    }

    @Test
    void two_tubes_that_read_alike_are_remembered_each_by_itself() {
        var one = aTube("1");
        var other = aTube("1");
        assertThat(beam(one)).isNotSameAs(beam(other)).isEqualTo(beam(one));
        assertThat(outputs.tubes()).isEqualTo(2);
    }
}
