/**
 * The pages in a real browser: chromium, driven by Playwright, on the demo department. What a test here says, somebody at the screen
 * sees; pictures of it lie in {@code target/screens}.
 */
package wallchart.browser;
