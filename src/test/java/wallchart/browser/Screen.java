package wallchart.browser;

import com.microsoft.playwright.Browser;

/** The screens that every page is looked at on. */
enum Screen {
    /** A small desktop, or a 10-inch screen lying. */
    SMALL(1280, 800, false),
    /** A usual desktop. */
    WIDE(1920, 1080, false),
    /** A 10-inch touch screen, standing. */
    TOUCH(800, 1280, true);

    private final int width;
    private final int height;
    private final boolean touch;

    Screen(int width, int height, boolean touch) {
        this.width = width;
        this.height = height;
        this.touch = touch;
    }

    Browser.NewContextOptions options() {
        return new Browser.NewContextOptions().setViewportSize(width, height).setHasTouch(touch);
    }
}
