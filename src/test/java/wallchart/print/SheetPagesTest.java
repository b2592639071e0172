package wallchart.print;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.print.SheetFixtures.sheet;
import static wallchart.print.SheetFixtures.written;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import wallchart.DemoRoom;
import wallchart.quantity.LengthUnit;

class SheetPagesTest {

    @Test
    void draw() throws IOException {
        for (var demo : DemoRoom.all()) {
            for (var paper : PaperSize.values()) {
                long begin = System.nanoTime();
                var file = written(sheet(demo, LengthUnit.CENTIMETRE), paper);
                System.out.println(
                        demo.room().id() + " " + paper + " " + file.length + " " + (System.nanoTime() - begin) / 1e6
                                + " ms " + ParsedSheet.of(file).pages());
                Files.createDirectories(Path.of("target/sheets"));
                Files.write(Path.of("target/sheets", demo.room().id() + "-" + paper.slug() + ".pdf"), file);
                assertThat(file).isNotEmpty();
            }
        }
    }
}
