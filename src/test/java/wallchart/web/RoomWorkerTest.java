package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Which files the room's page keeps at its workstation: those that it names, and those that these name. */
class RoomWorkerTest {

    @Test
    void the_page_its_scripts_and_their_libraries_are_on_the_list_and_no_other_page() {
        assertThat(RoomWorker.list(new PageFiles()).keySet())
                .contains(
                        RoomWorker.PAGE,
                        "/pages/theme.js",
                        "/pages/base.css",
                        "/pages/api.js",
                        "/pages/room/install.js",
                        "/pages/room/pack.js",
                        "/pages/room/pack-seal.js")
                .doesNotContain("/pages/home.js");
    }

    @Test
    void a_file_is_found_however_it_is_named() {
        assertThat(RoomWorker.named("/rooms/-", "<script src=\"/pages/theme.js\"></script>"))
                .containsExactly("/pages/theme.js");
        assertThat(RoomWorker.named("/pages/a.css", "a { background: url(/pages/room/grid.svg) }"))
                .containsExactly("/pages/room/grid.svg");
        assertThat(RoomWorker.named(
                        "/pages/room/a.js", "import { b } from './b.js';\nimport('../c.js');\nimport \"./d.js\""))
                .containsExactly("/pages/room/b.js", "/pages/c.js", "/pages/room/d.js");
        assertThat(RoomWorker.named("/pages/directives/live.js", "import{noChange as r}from\"../lit-html.js\";"))
                .containsExactly("/pages/lit-html.js");
        assertThat(RoomWorker.named("/pages/room/a.js", "link.href = '/pages/uplot.css'; // from '/elsewhere.js'"))
                .containsExactly("/pages/uplot.css");
    }

    @Test
    void another_content_is_another_build_and_no_blank_is_left_in_the_script() {
        var script = new String(RoomWorker.script(new PageFiles()).bytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(script)
                .contains("'wallchart-room-", "\"/rooms/-\":\"sha256-")
                .doesNotContain("{files}", "{build}", "{page}");
    }
}
