package wallchart.equipment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EquipmentFixturesTest {

    @Test
    void the_invented_room_is_possible() {
        assertThat(EquipmentFixtures.aRoom().room().generator().kV().stations()).hasSize(111);
        assertThat(EquipmentFixtures.aRoom()
                        .withoutAec()
                        .uncalibrated()
                        .room()
                        .tube()
                        .output())
                .isEmpty();
    }
}
